package dryfloor.analysis.network;

import dryfloor.analysis.failure.Effect;
import dryfloor.model.element.Control;
import java.util.List;

/** Compiles the controls of a drawing for the solver, with what has failed in them. */
final class ControlCompiler {

  private final Effects effects;
  private final Registry registry;

  ControlCompiler(Effects effects, Registry registry) {
    this.effects = effects;
    this.registry = registry;
  }

  /** A control with what has failed in it, the place that it feels and the parts that it drives. */
  ControlUnit unit(Control control) {
    return switch (control) {
      case Control.LevelSwitch levelSwitch ->
          new ControlUnit(
              banded(levelSwitch),
              registry.place(levelSwitch.vessel()),
              driven(levelSwitch),
              effects
                  .first(Effect.SwitchHeld.class, e -> e.levelSwitch().equals(control.id()))
                  .map(
                      held ->
                          held.low() ? ControlUnit.Fault.FEELS_LOW : ControlUnit.Fault.FEELS_HIGH)
                  .orElse(ControlUnit.Fault.NONE));
      case Control.LeakSensor sensor ->
          new ControlUnit(
              sensor, registry.place(sensor.in()), driven(sensor), deadOrTripped(control));
      case Control.Timer timer -> new ControlUnit(timer, -1, driven(timer), deadOrTripped(control));
      case Control.HandSwitch handSwitch ->
          new ControlUnit(asLeft(handSwitch), -1, driven(handSwitch), ControlUnit.Fault.NONE);
    };
  }

  private List<Integer> driven(Control control) {
    return control.drives().stream().map(registry::part).toList();
  }

  private ControlUnit.Fault deadOrTripped(Control control) {
    if (effects.has(Effect.ControlDead.class, e -> e.control().equals(control.id()))) {
      return ControlUnit.Fault.DEAD;
    }
    return effects.has(Effect.ControlTripped.class, e -> e.control().equals(control.id()))
        ? ControlUnit.Fault.TRIPPED
        : ControlUnit.Fault.NONE;
  }

  private Control banded(Control.LevelSwitch drawn) {
    return effects
        .first(Effect.SwitchBand.class, e -> e.levelSwitch().equals(drawn.id()))
        .map(
            narrowed -> {
              double middle = (drawn.lower() + drawn.upper()) / 2;
              return new Control.LevelSwitch(
                  drawn.id(),
                  drawn.name(),
                  drawn.vessel(),
                  middle - narrowed.band() / 2,
                  middle + narrowed.band() / 2,
                  drawn.action(),
                  drawn.drives());
            })
        .orElse(drawn);
  }

  private Control asLeft(Control.HandSwitch drawn) {
    return effects
        .first(Effect.HandSwitchSet.class, e -> e.handSwitch().equals(drawn.id()))
        .map(set -> new Control.HandSwitch(drawn.id(), drawn.name(), set.on(), drawn.drives()))
        .orElse(drawn);
  }
}
