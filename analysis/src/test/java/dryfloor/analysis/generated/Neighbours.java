package dryfloor.analysis.generated;

import static dryfloor.analysis.generated.Unit.dm2;
import static dryfloor.analysis.generated.Unit.mm;

import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;
import dryfloor.model.part.Part;
import java.util.Set;

/**
 * Tanks in a row, joined by balance pipes near their bottoms or by weirs.
 *
 * @param tanks how many
 * @param first plan area of the first (dm²)
 * @param others plan area of the others (dm²)
 * @param step by which each starts lower than the one before (mm)
 * @param bore of the pipes (mm); 0 for weirs alone
 */
public record Neighbours(
    Outline outline, int tanks, int first, int others, int step, int bore, Set<Trait> traits)
    implements Unit {

  static final Set<Trait> POSSIBLE =
      Set.of(
          Trait.TRAY,
          Trait.TRAY_DRAIN,
          Trait.EQUAL_ELEVATIONS,
          Trait.TWO_WEIRS_AT_ONE_HEIGHT,
          Trait.ZERO_FLOW_BRANCH,
          Trait.LEVEL_AT_LIP,
          Trait.CHECK_VALVE);

  private static final double HEIGHT = 0.5;
  private static final double CREST = 0.35;

  @Override
  public String sentence() {
    return String.format(
        "%d tanks in a row, a %s of %d dm2 and then %d dm2, each %d mm lower, joined %s%s",
        tanks,
        outline,
        first,
        others,
        step,
        bore == 0 ? "by weirs" : "through " + bore + " mm",
        Trait.words(traits));
  }

  @Override
  public void draw(Site site, String prefix) {
    String under =
        site.under(Site.PLANT_ROOM, prefix, 1.3 * (dm2(first) + (tanks - 1) * dm2(others)), traits);
    for (int i = 1; i <= tanks; i++) {
      String id = prefix + "tank-" + i;
      int number = i;
      site.plan.vessel(
          id,
          outline.of(dm2(i == 1 ? first : others), HEIGHT),
          v -> v.in(under).raised(0.03).level(level(number)).role(Vessel.Role.REFUGIUM));
      if (i > 1) {
        join(site, prefix, i);
      }
    }
  }

  private double level(int number) {
    if (traits.contains(Trait.LEVEL_AT_LIP)) {
      return CREST;
    }
    return traits.contains(Trait.EQUAL_ELEVATIONS) ? 0.3 : 0.34 - mm(step) * (number - 1);
  }

  private void join(Site site, String prefix, int number) {
    String upstream = prefix + "tank-" + (number - 1);
    String downstream = prefix + "tank-" + number;
    if (bore == 0 || traits.contains(Trait.TWO_WEIRS_AT_ONE_HEIGHT)) {
      double lower = traits.contains(Trait.TWO_WEIRS_AT_ONE_HEIGHT) ? 0 : 0.02 * (number - 2);
      site.plan.weir(
          new Weir(
              prefix + "weir-" + number,
              prefix + "weir-" + number,
              Weir.Kind.LIP,
              upstream,
              downstream,
              site.plan.bottomOf(upstream) + CREST - lower,
              0.3));
    }
    if (bore > 0) {
      drawPipe(site, prefix, number, upstream, downstream);
    }
  }

  private void drawPipe(Site site, String prefix, int number, String upstream, String downstream) {
    double at = 0.05;
    double elevation = site.plan.bottomOf(upstream) + at;
    site.plan.run(
        prefix + "balance-" + number,
        r -> {
          Route.of(0.3, elevation, elevation)
              .lay(
                  r.from(Parts.port(site, upstream, at))
                      .to(Parts.port(site, downstream, at))
                      .bore(mm(bore))
                      .standsIn(Site.PLANT_ROOM));
          if (traits.contains(Trait.ZERO_FLOW_BRANCH)) {
            r.parts(Parts.handValve(prefix + "valve-" + number, 0.1, 0, Part.Valve.Use.ISOLATE));
          }
          if (traits.contains(Trait.CHECK_VALVE)) {
            r.parts(Parts.checkValve(prefix + "check-" + number, 0.2));
          }
        });
  }
}
