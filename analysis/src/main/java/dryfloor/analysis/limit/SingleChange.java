package dryfloor.analysis.limit;

/**
 * One thing changed so that a failure wets no floor any more, and none that does not today.
 *
 * @param value nearest to today's that does it
 * @param share how much that is of all the values that were looked at
 */
public record SingleChange(Property property, Scale scale, double value, double share) {

  static SingleChange of(LimitAnswer.Found found, Mend mend) {
    Scale scale = found.scale();
    double nearest = mend.ranges().getFirst().from();
    for (SafeRange range : mend.ranges()) {
      double value = Math.clamp(scale.today(), range.from(), range.to());
      if (Math.abs(value - scale.today()) < Math.abs(nearest - scale.today())) {
        nearest = value;
      }
    }
    double span = scale.value(scale.most()) - scale.value(scale.least());
    return new SingleChange(
        found.property(), scale, nearest, Math.abs(nearest - scale.today()) / span);
  }
}
