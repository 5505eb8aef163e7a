package dryfloor.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fields, ids and quantities that are wrong in themselves. */
class WrongFieldTest {

  @Test
  void anUnknownFieldIsToldWithTheOneThatWasMeant() {
    Rejection.of("\"raised\": \"900 mm\"", "\"riased\": \"900 mm\", \"raised\": \"900 mm\"")
        .isOnly(
            "vessels[0].riased",
            "\"riased\"",
            "unknown field 'riased' (vessel)",
            "did you mean 'raised'?");
  }

  @Test
  void aFieldGivenTwiceIsToldWithTheLineOfTheFirst() {
    Rejection.of("\"bore\": \"32 mm\",", "\"bore\": \"32 mm\", \"length\": \"6 m\",")
        .isOnly(
            "runs[2].length",
            "\"length\": \"6.2 m\"",
            "the field 'length' is given twice",
            "keep one of them; the first is on line ");
  }

  @Test
  void aMissingFieldIsToldWithWhatToAdd() {
    Rejection.of("\"bore\": \"32 mm\",", "")
        .says(
            "runs[2].bore",
            "{\n      \"id\": \"riser\"",
            "'bore' is missing",
            "add \"bore\": a length such as \"32 mm\"");
  }

  @Test
  void aTemperatureIsNotToldToBeATemperature() {
    Rejection.of("\"temperature\": \"25 °C\"", "\"temperature\": \"25 kg\"")
        .isOnly(
            "water.temperature",
            "\"25 kg\"",
            "'25 kg' is a mass",
            "write a temperature such as \"25 °C\"");
  }

  @Test
  void anIdGivenTwiceIsToldAtTheSecondPlace() {
    Rejection.of("\"id\": \"break-right\"", "\"id\": \"return-pump\"")
        .isOnly(
            "runs[4].parts[0].id",
            "\"return-pump\", \"at\"",
            "the id 'return-pump' is taken",
            "the first is a pump on line ");
  }

  @Test
  void anIdWithASpaceIsNoId() {
    Rejection.of("\"id\": \"gully\"", "\"id\": \"the gully\"")
        .says("drains[0].id", "\"the gully\"", "'the gully' is no id", "letters, digits, dashes");
  }

  @Test
  void aDanglingIdIsToldWithTheOneThatWasMeant() {
    Rejection.of("\"circuit\": \"hall-circuit\"", "\"circuit\": \"hal-circuit\"")
        .isOnly(
            "circulationPumps[0].power.circuit",
            "\"hal-circuit\"",
            "nothing is drawn with the id 'hal-circuit'",
            "did you mean 'hall-circuit'?");
  }

  @Test
  void anIdOfTheWrongKindIsToldWithTheKindThatFits() {
    Rejection.of("\"storey\": \"cellar\"", "\"storey\": \"tray\"")
        .says("floors[0].storey", "\"tray\"", "'tray' is a vessel", "storey names a storey");
  }

  @Test
  void aRunEndAtAMissingVesselIsToldOnce() {
    Rejection.of(
            "{ \"vessel\": \"sump\", \"at\": \"300 mm\"",
            "{ \"vessel\": \"smup\", \"at\": \"300 mm\"")
        .isOnly(
            "runs[1].to.vessel",
            "\"smup\"",
            "nothing is drawn with the id 'smup'",
            "did you mean 'sump'?");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"32 kg\"    | '32 kg' is a mass                | bore is a length such as \"32 mm\"",
        "32           | '32' has no unit                 | bore is a length such as \"32 mm\"",
        "\"32\"       | '32' has no unit                 | bore is a length such as \"32 mm\"",
        "\"32 furlong\" | 'furlong' in '32 furlong' is no unit | bore is a length",
        "\"32 MM\"    | capitals matter: mm              | bore is a length",
        "\"3,2 cm\"   | has a comma                      | bore is a length",
        "\"wide\"     | does not begin with a number     | bore is a length",
        "\"-32 mm\"   | '-32 mm' is negative             | a length above zero, such as \"32 mm\"",
        "\"0 mm\"     | '0 mm' is zero                   | a length above zero, such as \"32 mm\"",
        "NaN          | 'NaN' is not a finite number     | bore is a length such as \"32 mm\"",
        "Infinity     | 'Infinity' is not a finite number | bore is a length such as \"32 mm\"",
        "1e999        | '1e999' is not a finite number   | bore is a length such as \"32 mm\"",
        "\"1e999 mm\" | is not a finite number           | bore is a length such as \"32 mm\"",
        "\"1e9 m\"    | absurdly large for a length      | bore is a length such as \"32 mm\"",
        "\"1e-20 m\"  | absurdly small for a length      | bore is a length such as \"32 mm\"",
        "\"40 m\"     | a bore of 40000.0 mm             | from 0.5 mm to 3 m",
        "true         | 'true' is no quantity            | bore is a length such as \"32 mm\"",
        "null         | null is no quantity              | bore is a length such as \"32 mm\"",
        "[\"32 mm\"]  | a list is no quantity            | bore is a length such as \"32 mm\"",
      })
  void aBoreThatIsNoSensibleLengthIsToldAtItsPlace(String bore, String message, String remedy) {
    Rejection.of("\"bore\": \"32 mm\"", "\"bore\": " + bore)
        .isOnly("runs[2].bore", bore + ",\n      \"length\": \"6.2 m\"", message, remedy);
  }

  @Test
  void aGallonMustSayWhichGallonItIs() {
    Rejection.of("\"volume\": \"10 L\"", "\"volume\": \"3 gal\"")
        .isOnly(
            "failures.topUps[0].volume",
            "\"3 gal\"",
            "does not say which gallon",
            "a volume in gal(US) or gal(UK)");
  }

  @Test
  void aWordOutsideTheChoiceIsToldWithTheNearest() {
    Rejection.of("\"duty\": \"drain\"", "\"duty\": \"drian\"")
        .says("runs[0].duty", "\"drian\"", "duty cannot be 'drian'", "did you mean 'drain'?");
  }

  @Test
  void aPartOfAnUnknownSortIsToldWithTheNearest() {
    Rejection.of("\"part\": \"checkValve\"", "\"part\": \"chekValve\"")
        .isOnly(
            "runs[2].parts[1].part",
            "\"chekValve\"",
            "'chekValve' is no part",
            "did you mean 'checkValve'?");
  }

  @Test
  void aHeightCanHangOnlyOnSomethingWithAHeight() {
    Rejection.of("\"40 mm above display.rim\"", "\"40 mm above riser\"")
        .isOnly(
            "runs[3].waypoints[0].elevation",
            "\"40 mm above riser\"",
            "'riser' is a run",
            "heights hang on a storey, a floor, a vessel or the datum");
  }

  @Test
  void heightsThatHangOnEachOtherInACircleAreTold() {
    Rejection rejection =
        Rejection.of("\"elevation\": \"-2.8 m\"", "\"elevation\": \"2.8 m below plant-room\"");
    rejection.says(
        "storeys[0].elevation",
        "\"2.8 m below plant-room\"",
        "the height of 'plant-room' hangs on itself",
        "measure one of the heights in this circle from the datum");
  }

  @Test
  void severalMistakesAreAllToldAtOnceInTheOrderOfTheFile() {
    String text =
        SampleFiles.text(SampleFiles.DISPLAY_ABOVE_SUMP)
            .replace("\"away\": \"72 h\"", "\"away\": \"72 m\"")
            .replace("\"level\": \"230 mm\"", "\"level\": \"530 mm\"")
            .replace("\"crest\": \"590 mm\"", "\"crest\": \"690 mm\"")
            .replace("\"spillsTo\": \"plant-room\"", "\"spillsTo\": \"plantroom\"")
            .replace("\"vented\"", "\"vnted\"")
            .replace("\"band\": \"30 mm\"", "\"bnad\": \"30 mm\"")
            .replace("[\"120 L/min\", \"3.0 m\"]", "[\"120 L/min\", \"7 m\"]");
    assertThat(Rejection.ofText(text).problems())
        .extracting(Problem::path)
        .containsExactly(
            "away",
            "floors[1].spillsTo",
            "vessels[3].level",
            "weirs[0].crest",
            "runs[2].parts[0].curve[2]",
            "runs[6].parts[0].band",
            "runs[6].parts[0].bnad");
  }
}
