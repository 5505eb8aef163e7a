package dryfloor.analysis.generated;

import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.domains.DomainContextBase;

/**
 * Buildings by chance, of 3 to {@value #MOST_COMPONENTS} components. Measures are whole millimetres
 * and the like, and shrink to the smallest; traits shrink to none and units fall away.
 */
public final class Buildings extends DomainContextBase {

  static final int MOST_COMPONENTS = 60;

  private static final int MOST_UNITS = 4;
  private static final int MOST_TRAITS = 6;

  @Provide
  Arbitrary<Building> buildings() {
    return Combinators.combine(premises(), units().list().ofMinSize(1).ofMaxSize(MOST_UNITS))
        .as(Building::new)
        .filter(building -> building.units().stream().filter(Buildings::comesAndGoes).count() <= 1)
        .filter(building -> building.draw().componentCount() <= MOST_COMPONENTS);
  }

  /**
   * Two units that come and go, each in its own time, never repeat themselves together: an honest
   * answer, but one that takes days of steps.
   */
  private static boolean comesAndGoes(Unit unit) {
    return switch (unit) {
      case CyclingPit pit -> true;
      case FlushingTank flusher -> true;
      case Tank other -> false;
      case Circle other -> false;
      case Rack other -> false;
      case Neighbours other -> false;
      case Store other -> false;
      case DeviceLoop other -> false;
      case MixingVat other -> false;
    };
  }

  private static Arbitrary<Premises> premises() {
    return Combinators.combine(
            whole(100, 4000),
            whole(5, 60),
            Arbitraries.of(false, true),
            Arbitraries.of(false, true),
            whole(5, 30),
            whole(1, 72))
        .as(Premises::new);
  }

  private static Arbitrary<Unit> units() {
    return Arbitraries.oneOf(
        tanks(),
        circles(),
        circles(),
        racks(),
        neighbours(),
        flushers(),
        pits(),
        stores(),
        loops(),
        vats());
  }

  /** Any whole number of a range is as likely as any other. */
  private static Arbitrary<Integer> whole(int least, int most) {
    return Arbitraries.integers()
        .between(least, most)
        .withDistribution(RandomDistribution.uniform())
        .shrinkTowards(least);
  }

  private static Arbitrary<Set<Trait>> traits(Set<Trait> possible) {
    return Arbitraries.of(possible.stream().sorted().toList())
        .set()
        .ofMaxSize(Math.min(MOST_TRAITS, possible.size()));
  }

  private static Arbitrary<Unit> tanks() {
    return Combinators.combine(
            Arbitraries.of(Vessel.Role.class),
            Arbitraries.of(Outline.class),
            whole(5, 300),
            whole(100, 900),
            whole(5, 95),
            traits(Tank.POSSIBLE))
        .as(Tank::new);
  }

  private static Arbitrary<Unit> circles() {
    Arbitrary<Circle> plain =
        Combinators.combine(
                Arbitraries.of(Outline.class),
                whole(20, 250),
                whole(350, 900),
                whole(10, 120),
                whole(350, 700),
                Arbitraries.of(Circle.Return.class),
                whole(100, 1300),
                whole(15, 40))
            .as(
                (outline, area, height, sumpArea, sumpHeight, outlet, flow, bore) ->
                    new Circle(
                        outline, area, height, sumpArea, sumpHeight, outlet, flow, bore, Set.of()));
    return Combinators.combine(plain, traits(Circle.POSSIBLE)).as(Circle::with);
  }

  private static Arbitrary<Unit> racks() {
    return Combinators.combine(
            whole(1, 4), whole(5, 100), whole(100, 1000), whole(0, 120), traits(Rack.POSSIBLE))
        .as(Rack::new);
  }

  private static Arbitrary<Unit> neighbours() {
    return Combinators.combine(
            Arbitraries.of(Outline.class),
            whole(2, 4),
            whole(1, 200),
            whole(1, 200),
            whole(0, 80),
            Arbitraries.oneOf(Arbitraries.just(0), whole(10, 60)),
            traits(Neighbours.POSSIBLE))
        .as(Neighbours::new);
  }

  private static Arbitrary<Unit> flushers() {
    return Combinators.combine(
            whole(1, 300),
            whole(2, 60),
            whole(100, 400),
            whole(10, 40),
            traits(FlushingTank.POSSIBLE))
        .as(FlushingTank::new);
  }

  private static Arbitrary<Unit> pits() {
    return Combinators.combine(
            whole(1, 100),
            whole(5, 60),
            whole(10, 300),
            whole(150, 800),
            traits(CyclingPit.POSSIBLE))
        .as(CyclingPit::new);
  }

  private static Arbitrary<Unit> stores() {
    return Combinators.combine(
            Arbitraries.of(Supply.Kind.class),
            Arbitraries.of(Store.TopUp.class),
            whole(5, 80),
            whole(5, 80),
            whole(5, 80),
            traits(Store.POSSIBLE))
        .as(Store::new);
  }

  private static Arbitrary<Unit> loops() {
    return Combinators.combine(
            Arbitraries.of(Part.Device.Kind.class),
            whole(3, 60),
            whole(0, 9000),
            whole(100, 600),
            traits(DeviceLoop.POSSIBLE))
        .as(DeviceLoop::new);
  }

  private static Arbitrary<Unit> vats() {
    return Combinators.combine(
            Arbitraries.of(Outline.class), whole(10, 150), whole(5, 95), traits(MixingVat.POSSIBLE))
        .as(MixingVat::new);
  }
}
