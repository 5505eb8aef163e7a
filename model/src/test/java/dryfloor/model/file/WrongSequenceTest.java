package dryfloor.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.model.Installation;
import dryfloor.model.Sequence;
import org.junit.jupiter.api.Test;

/** Sequences of events that can't be run as they are written. */
class WrongSequenceTest {

  /** 231 cubic inches (m³). */
  private static final double US_GALLON = 231 * Math.pow(0.0254, 3);

  @Test
  void eventsAreReadWithTheirTimesInSeconds() {
    Installation house = SampleFiles.read(SampleFiles.text(SampleFiles.EVERY_FORM));
    Sequence sequence = house.failureSettings().sequences().getFirst();
    assertThat(sequence.events().get(0))
        .isEqualTo(new Sequence.Event.Begins(0, "power-lost.building"));
    assertThat(sequence.events().get(1).time()).isEqualTo(1200);
    assertThat(sequence.events().get(2))
        .isEqualTo(new Sequence.Event.Ends(3600, "power-lost.building"));
    assertThat(sequence.events().get(3))
        .isEqualTo(new Sequence.Event.Takes(7200, "vat", 10 * US_GALLON, 0.05));
    assertThat(sequence.events().get(4))
        .isEqualTo(new Sequence.Event.Pours(10_800, "vat", 0.04, 35));
    assertThat(sequence.events().get(5))
        .isEqualTo(new Sequence.Event.Takes(14_400, "vat", 0.001, 0));
  }

  @Test
  void nothingThatHappensIsTold() {
    with("[]")
        .isOnly(
            "failures.sequences[0].events",
            "[] }",
            "nothing happens in the sequence 'week'",
            "at least one event");
  }

  @Test
  void aTimeBeforeTheBeginningIsTold() {
    with("[{ \"at\": \"-1 h\", \"begins\": \"power-lost.building\" }]")
        .isOnly("failures.sequences[0].events[0].at", "\"-1 h\"", "at", "0");
  }

  @Test
  void timesOutOfOrderAreTold() {
    with("[{ \"at\": \"2 h\", \"begins\": \"power-lost.building\" },"
            + " { \"at\": \"1 h\", \"ends\": \"power-lost.building\" }]")
        .isOnly(
            "failures.sequences[0].events[1].at",
            "\"1 h\"",
            "this event comes before the one above it",
            "in the order of their times");
  }

  @Test
  void whatEndsWithoutHavingBegunIsTold() {
    with("[{ \"at\": \"1 h\", \"ends\": \"power-lost.building\" }]")
        .isOnly(
            "failures.sequences[0].events[0].ends",
            "\"power-lost.building\"",
            "'power-lost.building' ends here but has not begun",
            "an earlier event that begins it");
  }

  @Test
  void whatBeginsTwiceIsTold() {
    with("[{ \"at\": \"0 s\", \"begins\": \"power-lost.building\" },"
            + " { \"at\": \"1 h\", \"begins\":  \"power-lost.building\" }]")
        .isOnly(
            "failures.sequences[0].events[1].begins",
            " \"power-lost.building\" }] }".strip(),
            "has begun already and is not over",
            "an event that ends it");
  }

  @Test
  void twoThingsInOneEventAreTold() {
    with("[{ \"at\": \"0 s\", \"begins\": \"power-lost.building\", \"pours\": \"1 L\" }]")
        .isOnly(
            "failures.sequences[0].events[0]",
            "{ \"at\": \"0 s\"",
            "this event is nothing, or several things at once",
            "\"begins\": \"power-lost.building\"");
  }

  @Test
  void waterPouredIntoWhatIsNoVesselIsTold() {
    with("[{ \"at\": \"0 s\", \"pours\": \"10 L\", \"into\": \"hall\" }]")
        .isOnly(
            "failures.sequences[0].events[0].into",
            "\"hall\" }] }",
            "'hall' is a floor",
            "a vessel");
  }

  @Test
  void waterTakenFromWhatIsNoVesselIsTold() {
    with("[{ \"at\": \"0 s\", \"takes\": \"10 L\", \"from\": \"hall\" }]")
        .isOnly(
            "failures.sequences[0].events[0].from",
            "\"hall\" }] }",
            "'hall' is a floor",
            "a vessel");
  }

  @Test
  void aHoseThatHangsAboveTheRimIsTold() {
    with("[{ \"at\": \"0 s\", \"takes\": \"10 L\", \"from\": \"sump\", \"downTo\": \"9 m\" }]")
        .isOnly(
            "failures.sequences[0].events[0].downTo",
            "\"9 m\"",
            "nothing of 'sump' can be taken",
            "below its rim");
  }

  @Test
  void waterTakenFromNowhereIsTold() {
    with("[{ \"at\": \"0 s\", \"takes\": \"10 L\" }]")
        .isOnly(
            "failures.sequences[0].events[0].from",
            "{ \"at\": \"0 s\"",
            "'from' is missing",
            "add \"from\"");
  }

  @Test
  void twoSequencesOfOneNameAreTold() {
    String twice =
        "{ \"id\": \"week\", \"events\": [{ \"at\": \"0 s\", \"begins\": \"a.b\" }] },"
            + " { \"id\":  \"week\", \"events\": [{ \"at\": \"0 s\", \"begins\": \"a.b\" }] }";
    Rejection.of("\"topUps\": [{", "\"sequences\": [" + twice + "], \"topUps\": [{")
        .isOnly(
            "failures.sequences[1].id",
            " \"week\", \"events\": [{ \"at\": \"0 s\", \"begins\": \"a.b\" }] }], ".strip(),
            "another sequence is called 'week' already",
            "another id");
  }

  private static Rejection with(String events) {
    return Rejection.of(
        "\"topUps\": [{",
        "\"sequences\": [{ \"id\": \"week\", \"events\": " + events + " }], \"topUps\": [{");
  }
}
