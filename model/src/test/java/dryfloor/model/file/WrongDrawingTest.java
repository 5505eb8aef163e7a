package dryfloor.model.file;

import org.junit.jupiter.api.Test;

/** Files that are well written but draw what can't be built. */
class WrongDrawingTest {

  @Test
  void aPortAboveTheRimIsTold() {
    Rejection.of(
            "\"at\": \"40 mm\", \"opening\": \"port\"", "\"at\": \"500 mm\", \"opening\": \"port\"")
        .says(
            "runs[2].from.at",
            "\"500 mm\", \"opening\": \"port\"",
            "the opening lies 50 mm above the rim of 'sump'",
            "at most 450 mm above the inside bottom");
  }

  @Test
  void aHeightFarFromWhereItIsMeasuredIsToldThoughEachOfItsStepsIsPossible() {
    Rejection.of("\"level\": \"602 mm\"", "\"level\": \"999.9 m above display.rim\"")
        .says(
            "vessels[0].level",
            "\"999.9 m above display.rim\"",
            "'999.9 m above display.rim' is absurdly far from what level is measured from",
            "at most 1000 m above or below it");
  }

  @Test
  void cornersAroundATownAreTold() {
    Rejection.of(
            "{ \"box\": { \"length\": \"1800 mm\", \"width\": \"700 mm\", \"height\": \"650 mm\" }"
                + " }",
            "{ \"outline\": { \"corners\": [[\"0 m\", \"0 m\"], [\"900 m\", \"0 m\"],"
                + " [\"900 m\", \"900 m\"]], \"height\": \"650 mm\" } }")
        .says(
            "vessels[0].shape.outline.corners",
            "[[\"0 m\"",
            "these corners enclose an absurd area, or one with an absurd rim",
            "with a rim from 0.0001 mm to 1000 m");
  }

  @Test
  void aPortBelowTheBottomIsTold() {
    Rejection.of(
            "\"at\": \"40 mm\", \"opening\": \"port\"", "\"at\": \"-40 mm\", \"opening\": \"port\"")
        .isOnly(
            "runs[2].from.at",
            "\"-40 mm\"",
            "the opening lies 40 mm below the bottom of 'sump'",
            "0 mm or more above the inside bottom or floor");
  }

  @Test
  void aFloorDrainBelowTheFloorIsTold() {
    Rejection.of("{ \"floor\": \"hall\" }", "{ \"floor\": \"hall\", \"at\": \"-10 mm\" }")
        .isOnly(
            "runs[7].from.at",
            "\"-10 mm\"",
            "the opening lies 10 mm below the bottom of 'hall'",
            "0 mm or more");
  }

  @Test
  void aRunWithoutAnEndIsTold() {
    Rejection.of("\"to\": { \"drain\": \"gully\" },", "")
        .isOnly(
            "runs[7].to",
            "{\n      \"id\": \"hall-floor-drain\"",
            "'to' is missing",
            "add \"to\": an object");
  }

  @Test
  void aRunEndThatNamesNothingIsTold() {
    Rejection.of("\"to\": { \"drain\": \"gully\" }", "\"to\": { }")
        .isOnly(
            "runs[7].to",
            "{ },",
            "this run end is nowhere, or in two places",
            "a run end names one vessel, floor, junction, supply or drain");
  }

  @Test
  void aRunFromAnOpeningToItselfIsTold() {
    Rejection.of(
            "\"to\": { \"vessel\": \"sump\", \"at\": \"200 mm\", \"opening\": \"free\" }",
            "\"to\": { \"vessel\": \"overflow-box\", \"at\": \"430 mm\", \"opening\": \"standpipe\""
                + " }")
        .isOnly(
            "runs[0].to",
            "{ \"vessel\": \"overflow-box\", \"at\": \"430 mm\", \"opening\": \"standpipe\" },\n"
                + "      \"duty\"",
            "both ends of the run are the same opening",
            "from one place to another");
  }

  @Test
  void aVesselThatStandsNowhereIsTold() {
    Rejection.of("\"standsIn\": \"tray\",\n      \"raised\": \"20 mm\",", "")
        .says(
            "vessels[3].standsIn",
            "{\n      \"id\": \"sump\"",
            "'standsIn' is missing",
            "add \"standsIn\"");
  }

  @Test
  void aVesselThatStandsInItselfByWayOfAnotherIsTold() {
    Rejection rejection =
        Rejection.of(
            "\"height\": \"100 mm\" } }, \"standsIn\": \"plant-room\"",
            "\"height\": \"100 mm\" } }, \"standsIn\": \"sump\"");
    rejection.says(
        "vessels[2].standsIn",
        "\"sump\" },\n    {\n      \"id\": \"sump\"",
        "the vessel stands in itself: tray, then sump, then tray",
        "every vessel stands, at last, on a floor");
  }

  @Test
  void aVesselLargerThanTheTrayItStandsInIsTold() {
    Rejection.of("{ \"length\": \"1600 mm\"", "{ \"length\": \"600 mm\"")
        .isOnly(
            "vessels[3].standsIn",
            "\"tray\",\n      \"raised\"",
            "'tray' has a plan area of 0.480 m2, too little for the 0.600 m2",
            "a larger 'tray'");
  }

  @Test
  void aWeirAboveTheRimIsTold() {
    Rejection.of("\"crest\": \"590 mm\"", "\"crest\": \"660 mm\"")
        .isOnly(
            "weirs[0].crest",
            "\"660 mm\"",
            "the crest lies 10 mm above the rim of 'display', which would spill first",
            "a crest below both rims");
  }

  @Test
  void aLevelAboveTheRimIsTold() {
    Rejection.of("\"level\": \"602 mm\"", "\"level\": \"680 mm\"")
        .isOnly(
            "vessels[0].level",
            "\"680 mm\"",
            "the water stands 30 mm above the rim",
            "give a level of at most 650 mm above the inside bottom");
  }

  @Test
  void contentsLargerThanTheVesselAreTold() {
    Rejection.of("\"volume\": \"90 L\"", "\"volume\": \"500 L\"")
        .isOnly(
            "vessels[0].contents[0].volume",
            "\"500 L\"",
            "the contents are larger than the vessel",
            "less than the 441 L");
  }

  @Test
  void aPumpCurveThatRisesIsTold() {
    Rejection.of("[\"60 L/min\", \"5.6 m\"]", "[\"60 L/min\", \"6.6 m\"]")
        .isOnly(
            "runs[2].parts[0].curve[1]",
            "[\"60 L/min\"",
            "the head rises or stays from 6500 mm to 6600 mm",
            "the head of a pump falls as its flow rises");
  }

  @Test
  void aRunShorterThanItsClimbIsTold() {
    Rejection.of("\"length\": \"6.2 m\"", "\"length\": \"2 m\"")
        .isOnly(
            "runs[2].length",
            "\"2 m\"",
            "the run climbs and falls 3720 mm on a length of 2000 mm",
            "the developed length of the pipe");
  }

  @Test
  void aPartBeyondTheEndOfItsRunIsTold() {
    Rejection.of("\"along\": \"4.3 m\"", "\"along\": \"43 m\"")
        .isOnly(
            "runs[0].parts[1].along",
            "\"43 m\"",
            "43000 mm along a run of 5200 mm",
            "counted from its first end");
  }

  @Test
  void partsOutOfOrderAreTold() {
    Rejection.of("\"along\": \"4.3 m\"", "\"along\": \"3.9 m\"")
        .isOnly(
            "runs[0].parts[1].along",
            "\"3.9 m\"",
            "ahead of the one listed before it",
            "in order from the first end");
  }

  @Test
  void aSwitchWhoseLevelsAreUpsideDownIsTold() {
    Rejection.of("\"lower\": \"225 mm\"", "\"lower\": \"240 mm\"")
        .isOnly(
            "controls[0].lower",
            "\"240 mm\", \"upper\"",
            "the lower switching level is not below the upper",
            "hysteresis");
  }

  @Test
  void aControlThatSwitchesAHandValveIsTold() {
    Rejection.of("\"drives\": [\"top-off-pump\"]", "\"drives\": [\"drain-valve\"]")
        .isOnly(
            "controls[0].drives[0]",
            "\"drain-valve\"] },\n    { \"control\"",
            "'drain-valve' is not a pump, circulation pump or powered valve",
            "names a pump, circulation pump or powered valve");
  }

  @Test
  void aSensorThatLiesInTheWaterIsTold() {
    Rejection.of("\"in\": \"tray\"", "\"in\": \"sump\"")
        .isOnly(
            "controls[2].in",
            "\"sump\", \"depth\"",
            "the sensor lies under water in normal operation",
            "a basin or floor that is dry");
  }

  @Test
  void aJunctionWhereNothingMeetsIsTold() {
    Rejection.of(
            "\"junctions\": [", "\"junctions\": [{ \"id\": \"lonely\", \"elevation\": \"1 m\" }, ")
        .isOnly(
            "junctions[0]",
            "{ \"id\": \"lonely\"",
            "fewer than two run ends meet at this junction",
            "or no junction");
  }

  @Test
  void aJointThatStandsNowhereIsTold() {
    String text =
        SampleFiles.text(SampleFiles.DISPLAY_ABOVE_SUMP)
            .replace(
                "\"elevation\": \"0.9 m above cellar\", \"standsIn\": \"tray\"",
                "\"elevation\": \"0.9 m above cellar\"")
            .replace(
                "\"fittings\": { \"elbow90\": 3, \"sharpEntrance\": 1, \"exit\": 1 },\n"
                    + "      \"standsIn\": \"plant-room\",",
                "");
    Rejection.ofText(text)
        .isOnly(
            "runs[0].parts[1].standsIn",
            "{ \"part\": \"joint\", \"id\": \"drain-union\"",
            "'drain-union' stands nowhere",
            "add \"standsIn\"");
  }

  @Test
  void floorsThatSpillInACircleAreTold() {
    Rejection.of(
            "\"sill\": \"20 mm\", \"sillLength\": \"800 mm\"",
            "\"sill\": \"20 mm\", \"sillLength\": \"800 mm\", \"spillsTo\": \"hall\"")
        .says(
            "floors[0].spillsTo",
            "\"hall\" },",
            "what spills from here comes back",
            "leave spillsTo out where the water leaves the drawing");
  }

  @Test
  void aTableWithAWrongUnitIsToldOnce() {
    Rejection.of(
            "{ \"cylinder\": { \"diameter\": \"300 mm\", \"height\": \"600 mm\" } }",
            "{ \"table\": { \"rimLength\": \"1 m\", \"points\": [[\"0 mm\", \"0 L\"], [\"600 mm\","
                + " \"42 kg\"]] } }")
        .isOnly(
            "vessels[4].shape.table.points[1][1]",
            "\"42 kg\"",
            "'42 kg' is a mass",
            "the second of two is a volume such as \"120 L\"");
  }

  @Test
  void aTableThatDoesNotRiseIsTold() {
    Rejection.of(
            "{ \"cylinder\": { \"diameter\": \"300 mm\", \"height\": \"600 mm\" } }",
            "{ \"table\": { \"rimLength\": \"1 m\", \"points\": [[\"0 mm\", \"0 L\"], [\"600 mm\","
                + " \"42 L\"], [\"600 mm\", \"43 L\"]] } }")
        .says(
            "vessels[4].shape.table.points",
            "[[\"0 mm\", \"0 L\"]",
            "rise from point to point; point 3 does not",
            "[[\"0 mm\", \"0 L\"], [\"100 mm\", \"60 L\"], ...]");
  }

  @Test
  void cornersWhoseSidesCrossAreTold() {
    Rejection.of(
            "{ \"cylinder\": { \"diameter\": \"300 mm\", \"height\": \"600 mm\" } }",
            "{ \"outline\": { \"height\": \"600 mm\", \"corners\": [[\"0 m\", \"0 m\"], [\"1 m\","
                + " \"1 m\"], [\"1 m\", \"0 m\"], [\"0 m\", \"2 m\"]] } }")
        .says(
            "vessels[4].shape.outline.corners",
            "[[\"0 m\", \"0 m\"]",
            "these corners enclose no area, or their sides cross",
            "in order around the vessel");
  }
}
