package dryfloor.model.file;

import java.util.Arrays;
import java.util.Optional;

/** Checks that an id names something that is drawn and of the right sort. */
final class ReferenceCheck {

  private ReferenceCheck() {}

  /** Checks an id that must name one of these. */
  static void check(
      String id, FilePlace place, String field, Context context, Referent... referents) {
    Optional<DrawnIds.Drawn> drawn = context.ids().find(id);
    if (drawn.isEmpty()) {
      context
          .problems()
          .add(
              place,
              "nothing is drawn with the id '" + id + "'",
              () -> Words.suggestion(id, context.ids().all(referents)));
    } else if (!Arrays.asList(referents).contains(drawn.get().referent())) {
      context
          .problems()
          .add(
              place,
              "'" + id + "' is " + drawn.get().referent().description(),
              field + " names " + Referent.oneOf(referents));
    }
  }

  /** Checks that a relative height hangs on something that has a height. */
  static void check(HeightText height, FilePlace place, Context context) {
    switch (height) {
      case HeightText.Plain plain -> {}
      case HeightText.Unfit unfit ->
          context.problems().add(place, unfit.found(), "write " + unfit.wanted());
      case HeightText.Relative relative -> check(relative.id(), relative.rim(), place, context);
    }
  }

  private static void check(String id, boolean rim, FilePlace place, Context context) {
    if (id.equals(HeightText.DATUM) && !rim) {
      return;
    }
    Optional<Referent> referent = context.ids().find(id).map(DrawnIds.Drawn::referent);
    if (referent.isEmpty()) {
      context
          .problems()
          .add(
              place,
              "nothing is drawn with the id '" + id + "'",
              () ->
                  Words.suggestion(
                      id, context.ids().all(Referent.STOREY, Referent.FLOOR, Referent.VESSEL)));
    } else if (rim && referent.get() != Referent.VESSEL) {
      context
          .problems()
          .add(
              place,
              "'" + id + "' is " + referent.get().description() + " and has no rim",
              "only a vessel has a rim");
    } else if (hasNoHeight(referent.get())) {
      context
          .problems()
          .add(
              place,
              "'" + id + "' is " + referent.get().description(),
              "heights hang on a storey, a floor, a vessel or the datum");
    } else if (context.elevations().isCircular(id)) {
      context
          .problems()
          .add(
              place,
              "the height of '" + id + "' hangs on itself",
              "measure one of the heights in this circle from the datum");
    }
  }

  private static boolean hasNoHeight(Referent referent) {
    return switch (referent) {
      case STOREY, FLOOR, VESSEL -> false;
      case WEIR,
          JUNCTION,
          SUPPLY,
          DRAIN,
          RUN,
          CIRCULATION_PUMP,
          CIRCUIT,
          CONTROL,
          PUMP,
          VALVE,
          OTHER_PART ->
          true;
    };
  }
}
