package dryfloor.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The largest drawings that are allowed, sound and wrong, are answered within seconds. */
class LargeFilesTest {

  private static final int MANY = 9_990;

  @Test
  void aDrawingOfTwentyThousandComponentsIsRead() {
    Reading reading = read(i -> vessel(i, "floor"), i -> run(i, "v" + i));
    assertThat(reading).isInstanceOf(Reading.Read.class);
    assertThat(((Reading.Read) reading).installation().componentCount()).isGreaterThan(2 * MANY);
  }

  @Test
  void tenThousandRunsFromNowhereAreToldUpToALimit() {
    Reading reading = read(i -> vessel(i, "floor"), i -> run(i, "w" + i));
    assertThat(reading).isInstanceOf(Reading.Rejected.class);
    assertThat(((Reading.Rejected) reading).problems())
        .hasSize(Problems.MOST_REPORTED + 1)
        .last()
        .satisfies(problem -> assertThat(problem.message()).contains("further problems"));
  }

  @Test
  void tenThousandVesselsThatStandInEachOtherInACircleAreTold() {
    Reading reading = read(i -> vessel(i, "v" + (i + 1) % MANY), i -> run(i, "v" + i));
    assertThat(reading).isInstanceOf(Reading.Rejected.class);
    assertThat(((Reading.Rejected) reading).problems().getFirst().message())
        .contains("stands in itself");
  }

  @Test
  void aTowerOfTenThousandVesselsIsRead() {
    Reading reading = read(i -> vessel(i, i == 0 ? "floor" : "v" + (i - 1)), i -> run(i, "v" + i));
    assertThat(reading).isInstanceOf(Reading.Read.class);
  }

  @Test
  void aListOfTwoThousandContentsIsRefused() {
    String solid = "{\"from\": \"0 mm\", \"to\": \"10 mm\", \"volume\": \"1 mL\"}";
    String contents =
        IntStream.range(0, 2000).mapToObj(i -> solid).collect(Collectors.joining(","));
    Rejection.of("\"contents\": [", "\"contents\": [" + contents + ",")
        .isOnly(
            "vessels[0].contents",
            "[" + solid,
            "a list of 2001 items",
            "a list of at most 1000 items");
  }

  private static Reading read(IntFunction<String> vessel, IntFunction<String> run) {
    String text =
        """
        {"dryfloor": 1, "name": "Many", "water": {"salinity": "35 g/kg"},
         "storeys": [{"id": "ground", "elevation": "0 m", "height": "3 m"}],
         "floors": [{"id": "floor", "storey": "ground", "area": "9 m2", "sill": "0 mm",
                     "sillLength": "1 m"}],
         "drains": [{"id": "sink", "elevation": "-1 m"}],
         "vessels": [%s],
         "runs": [%s]}
        """
            .formatted(many(vessel), many(run));
    Instant start = Instant.now();
    Reading reading = InstallationFile.readText(text);
    assertThat(Duration.between(start, Instant.now())).isLessThan(Duration.ofSeconds(20));
    return reading;
  }

  private static String many(IntFunction<String> item) {
    return IntStream.range(0, MANY).mapToObj(item).collect(Collectors.joining(",\n"));
  }

  private static String vessel(int i, String standsIn) {
    return """
        {"id": "v%d", "role": "sump", "shape": {"box": {"length": "1 m", "width": "1 m",
         "height": "1 m"}}, "standsIn": "%s", "level": "500 mm"}\
        """
        .formatted(i, standsIn);
  }

  private static String run(int i, String vessel) {
    return """
        {"id": "r%d", "from": {"vessel": "%s", "at": "0 mm", "opening": "port"},
         "to": {"drain": "sink"}, "duty": "drain", "bore": "20 mm", "length": "9 m",
         "standsIn": "floor"}\
        """
        .formatted(i, vessel);
  }
}
