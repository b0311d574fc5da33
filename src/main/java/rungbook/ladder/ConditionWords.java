package rungbook.ladder;

import java.util.List;
import java.util.stream.Collectors;
import rungbook.system.Condition;
import rungbook.system.ControlSystem;
import rungbook.system.Part;
import rungbook.system.Vocabulary;

/** Conditions in the words of the system's text. */
final class ConditionWords {

  private final ControlSystem system;

  ConditionWords(ControlSystem system) {
    this.system = system;
  }

  /** Empty for a condition that always holds. */
  String of(Condition condition) {
    if (condition instanceof Condition.All all) {
      return joined(all.of(), " and ");
    }
    if (condition instanceof Condition.Any any) {
      return joined(any.of(), " or ");
    }
    if (condition instanceof Condition.Not not) {
      return "not " + of(not.of());
    }
    return term(condition);
  }

  String of(Part.Switch contact) {
    String closed = of(contact.closedWhen());
    return contact.manualReset() ? closed + (closed.isEmpty() ? "" : ", ") + "manual reset" : closed;
  }

  String of(Part.State state) {
    String after = state.delay().map(ConditionWords::of)
        .orElse(state.after() > 0 ? ", after " + state.after() + " rounds" : "");
    return state.reset().map(reset -> "set when " + of(state.set()) + ", reset when " + of(reset))
        .orElseGet(() -> "when " + of(state.set())) + after;
  }

  private static String of(Part.Delay delay) {
    return (delay.onSeconds() > 0 ? ", on after " + delay.onSeconds() + " s" : "")
        + (delay.offSeconds() > 0 ? ", off after " + delay.offSeconds() + " s" : "");
  }

  private String joined(List<Condition> terms, String word) {
    return terms.stream().map(this::of).collect(Collectors.joining(word));
  }

  private String term(Condition term) {
    if (term instanceof Condition.Selected selected) {
      Vocabulary.Control control = system.vocabulary().controls().get(selected.control());
      return (control == null ? selected.control() : control.name()) + " " + selected.position();
    }
    if (term instanceof Condition.On on) {
      boolean isState = system.part(on.name()).filter(Part.State.class::isInstance).isPresent();
      return name(on.name()) + (isState ? "" : " on");
    }
    return term instanceof Condition.Humming humming ? name(humming.name()) + " humming"
        : name(((Condition.Closed) term).name()) + " closed";
  }

  private String name(String key) {
    return system.part(key).map(Part::name).or(() -> system.branch(key).map(branch -> branch.name())).orElse(key);
  }
}
