package rungbook.pack.path;

import java.util.Locale;
import java.util.Optional;
import rungbook.action.EquipmentCondition;
import rungbook.system.Names;
import rungbook.system.Vocabulary.Role;
import rungbook.system.Vocabulary;

/** The equipment's state in a few words: {@code blower door off}. */
final class StateWords {

  private static final String AT = " at ";

  private final Optional<Vocabulary> system;

  StateWords(Optional<Vocabulary> system) {
    this.system = system;
  }

  /** @return empty for a condition that nobody has to remember */
  Optional<String> begun(EquipmentCondition condition, String key) {
    return words(key, switch (condition) {
      case OPEN, ISOLATED -> "off";
      case BYPASSED -> "bypassed";
      case DISCONNECTED -> "disconnected";
      default -> "";
    });
  }

  /** @return empty for a condition that nobody has to remember */
  Optional<String> ended(EquipmentCondition condition, String key) {
    return words(key, switch (condition) {
      case OPEN, ISOLATED -> "on";
      case BYPASSED -> "no longer bypassed";
      case DISCONNECTED -> "connected";
      default -> "";
    });
  }

  /** @return empty for a stage, which comes by itself */
  Optional<String> set(String control, String position) {
    boolean comesByItself = system.map(known -> known.controls().get(Names.key(control)))
        .filter(known -> known.role() == Role.STAGE).isPresent();
    return comesByItself ? Optional.empty() : Optional.of(name(control) + AT + position);
  }

  /** What every position of a control begins with; empty for a stage. */
  Optional<String> anyPosition(String control) {
    return set(control, "");
  }

  /** A position to set back: any but the system's first one, which is as everybody expects it. */
  Optional<String> left(String control, String position) {
    boolean isFirst = system.map(known -> known.controls().get(Names.key(control)))
        .filter(known -> !known.positions().isEmpty() && known.positions().get(0).equals(position)).isPresent();
    return isFirst ? Optional.empty() : set(control, position);
  }

  private Optional<String> words(String key, String state) {
    return state.isEmpty() ? Optional.empty() : Optional.of(name(key) + " " + state);
  }

  /** As the system writes it: facts know keys only. */
  private String name(String key) {
    int at = key.indexOf(AT);
    String thing = at < 0 ? key : key.substring(0, at);
    return system.map(known -> nameIn(known, thing)).orElse(thing) + (at < 0 ? "" : key.substring(at));
  }

  private static String nameIn(Vocabulary system, String key) {
    if (system.controls().containsKey(key)) {
      return system.controls().get(key).name();
    }
    if (system.parts().containsKey(key)) {
      return system.parts().get(key).name();
    }
    return system.panels().stream().filter(panel -> panel.toLowerCase(Locale.ROOT).equals(key)).findFirst()
        .orElseGet(() -> system.pointName(key));
  }
}
