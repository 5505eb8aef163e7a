package dryfloor.analysis.generated;

import java.util.Collection;
import java.util.stream.Collectors;

/** What makes one unit of a building unlike another, in words that complete a sentence. */
public enum Trait {
  TRAY("in a tray"),
  TRAY_DRAIN("in a tray with a drain"),
  LIGHT("so light that it may float"),
  ROCKS("with rocks"),
  STIRRED("stirred by a pump"),
  STEEP("with steep pipes of many bends"),
  JOINTS("with joints of every kind"),
  STRAINER("with a strainer"),
  HAND_VALVE("with a throttled hand valve"),
  POWERED_VALVE("with a powered valve"),
  CHECK_VALVE("with a check valve"),
  VENTED("with a vented drain"),
  THROTTLED_DRAIN("with a throttled drain that runs full"),
  EMERGENCY_DRAIN("with an emergency drain"),
  CHAMBER("with a return chamber"),
  TINY_CHAMBER("with a tiny chamber that sees the whole flow"),
  OVERFLOW_BOX("with an overflow box behind teeth"),
  PARALLEL_PUMPS("with parallel pumps against check valves"),
  LEVEL_AT_LIP("with the water exactly at the lip"),
  LEVEL_AT_RIM("full to the rim"),
  EQUAL_ELEVATIONS("with everything at one elevation"),
  TWO_WEIRS_AT_ONE_HEIGHT("with weirs at one height"),
  ZERO_FLOW_BRANCH("with a branch that carries nothing"),
  LOSES_PRIME("with a pump that does not prime again"),
  STAYS_OFF("with a pump that stays off when power returns"),
  RESTARTS_LATE("with a pump that restarts late"),
  BACKED_UP("on a circuit with a backup"),
  HIGH_CUTOFF("with a high-level cutoff"),
  LOW_CUTOFF("with a low-level cutoff"),
  TIMER("with a timer"),
  HAND_SWITCH("with a hand switch"),
  LEAK_SENSOR("with a leak sensor"),
  SURCHARGED_DRAIN("into a drain that can back up");

  private final String words;

  Trait(String words) {
    this.words = words;
  }

  static String words(Collection<Trait> traits) {
    return traits.stream().sorted().map(trait -> ", " + trait.words).collect(Collectors.joining());
  }
}
