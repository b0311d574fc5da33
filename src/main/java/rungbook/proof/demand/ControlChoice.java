package rungbook.proof.demand;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rungbook.action.EquipmentCondition;
import rungbook.action.StateChange;
import rungbook.circuit.network.CircuitState;
import rungbook.system.Names;
import rungbook.system.Vocabulary.Control;
import rungbook.system.Vocabulary;

/**
 * Something that a person can set before a reading: a control or a panel.
 *
 * @param positions in words; the first is the one at the start
 */
public record ControlChoice(String name, Kind kind, List<String> positions) {

  /** What kind of control it is. */
  public enum Kind { SELECTOR, STAGE, POWER_SWITCH, INTERLOCK, PANEL, RESET_BUTTON }

  private static final List<String> POWER = List.of("on", "off");
  private static final List<String> INTERLOCK = List.of("in place", "bypassed");
  private static final List<String> PANEL = List.of("closed", "open");
  private static final List<String> RESET_BUTTON = List.of("not pressed", "pressed");

  /** What the name of a part with manual reset has behind it. */
  private static final String BUTTON = " reset button";

  public ControlChoice {
    positions = List.copyOf(positions);
  }

  /** Everything that can be set: the controls in the order of the text, then the panels and the reset buttons. */
  public static List<ControlChoice> of(Vocabulary words) {
    return Stream.of(words.controls().values().stream().map(ControlChoice::of),
        words.panels().stream().map(panel -> new ControlChoice(panel, Kind.PANEL, PANEL)),
        words.parts().values().stream().filter(Vocabulary.Part::hasManualReset)
            .map(part -> new ControlChoice(part.name() + BUTTON, Kind.RESET_BUTTON, RESET_BUTTON)))
        .flatMap(choices -> choices).toList();
  }

  private static ControlChoice of(Control control) {
    return switch (control.role()) {
      case SELECTOR -> new ControlChoice(control.name(), Kind.SELECTOR, control.positions());
      case STAGE -> new ControlChoice(control.name(), Kind.STAGE, control.positions());
      case ISOLATOR -> new ControlChoice(control.name(), Kind.POWER_SWITCH, POWER);
      case INTERLOCK -> new ControlChoice(control.name(), Kind.INTERLOCK, INTERLOCK);
    };
  }

  public String key() {
    return Names.key(name);
  }

  /** How people and trees write it: {@code thermostat cooling}, {@code door switch bypassed}. */
  public String at(String position) {
    return name + " " + position;
  }

  /** The keys of what is reset by setting this to one of its positions. */
  Set<String> renewed(String position) {
    boolean isPressed = kind == Kind.RESET_BUTTON && !positions.get(0).equals(Names.key(position));
    return isPressed ? Set.of(Names.key(name.substring(0, name.length() - BUTTON.length()))) : Set.of();
  }

  /** The state after this control is set to one of its positions. */
  CircuitState set(String position, CircuitState state) {
    boolean isFirst = positions.get(0).equals(Names.key(position));
    return switch (kind) {
      case SELECTOR, STAGE -> state.set(name, position);
      case POWER_SWITCH -> change(isFirst, EquipmentCondition.ISOLATED, state);
      case INTERLOCK -> change(isFirst, EquipmentCondition.BYPASSED, state);
      case PANEL -> change(isFirst, EquipmentCondition.OPEN, state);
      case RESET_BUTTON -> renewed(position).stream().findFirst().map(state::replace).orElse(state);
    };
  }

  private CircuitState change(boolean ends, EquipmentCondition condition, CircuitState state) {
    return state.after(List.of(ends ? new StateChange.End(condition, key()) : new StateChange.Begin(condition, key())));
  }
}
