package dryfloor.analysis.band;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Points between the ends by chance: each value by itself anywhere between its ends, every place
 * being as likely as any other.
 *
 * @param samples how many points, at least one
 * @param seed from which the same points come again
 */
public record Sampling(int samples, long seed) {

  List<Point> points(int values) {
    SplittableRandom random = new SplittableRandom(seed);
    return Stream.generate(
            () ->
                new Point(
                    DoubleStream.generate(() -> random.nextDouble(-1, 1))
                        .limit(values)
                        .boxed()
                        .toList()))
        .limit(samples)
        .toList();
  }
}
