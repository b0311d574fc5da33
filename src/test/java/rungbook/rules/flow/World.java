package rungbook.rules.flow;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rungbook.action.ActionKind;
import rungbook.tree.Action;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** The equipment as one person finds it who follows one path, by the words of docs/tree-text.md alone. */
final class World {

  final Set<String> sources;
  final Set<String> isolated = new HashSet<>();
  final Set<String> tagged = new HashSet<>();
  final Set<String> bypassed = new HashSet<>();
  final Set<String> open = new HashSet<>();
  final Set<String> disconnected = new HashSet<>();
  final Set<String> discharged = new HashSet<>();
  /** Switched off, and not tried since. */
  final Set<String> untried = new HashSet<>();
  private final Set<String> tried = new HashSet<>();
  private final Set<String> restored = new HashSet<>();
  final Set<String> findings = new HashSet<>();
  final Map<String, String> positions = new HashMap<>();
  boolean poweredOff;
  boolean provedDead;
  boolean repaired;
  boolean unchecked;

  /** @param sources the names that the tree isolates somewhere */
  private World(Set<String> sources) {
    this.sources = sources;
  }

  static World before(Tree tree) {
    Set<String> sources = new HashSet<>();
    for (Step step : tree.steps()) {
      step.actions().stream()
          .filter(action -> action.kind() == ActionKind.ISOLATE || action.kind() == ActionKind.TAG_OUT)
          .forEach(action -> sources.add(action.thing().key()));
    }
    return new World(sources);
  }

  World copy() {
    World copy = new World(sources);
    copy.isolated.addAll(isolated);
    copy.tagged.addAll(tagged);
    copy.bypassed.addAll(bypassed);
    copy.open.addAll(open);
    copy.disconnected.addAll(disconnected);
    copy.discharged.addAll(discharged);
    copy.untried.addAll(untried);
    copy.findings.addAll(findings);
    copy.positions.putAll(positions);
    copy.poweredOff = poweredOff;
    copy.provedDead = provedDead;
    copy.repaired = repaired;
    copy.unchecked = unchecked;
    return copy;
  }

  /**
   * Does a step and takes one of its ways. On one that says the proof failed, what the step itself proved is not
   * proved.
   */
  void pass(Step step, String answer) {
    if (step instanceof Step.Finding) {
      findings.add(step.id());
      repaired = false;
      unchecked = true;
    }
    unchecked &= !(step instanceof Step.Check);
    step.actions().forEach(this::act);
    boolean proves = step.actions().stream()
        .anyMatch(action -> action.kind() == ActionKind.PROVE_DEAD || action.kind() == ActionKind.DISCHARGE
            || action.kind() == ActionKind.TRY);
    if (proves && answer.equals("not dead")) {
      World alone = new World(sources);
      step.actions().forEach(alone::act);
      provedDead &= !alone.provedDead;
      discharged.removeAll(alone.discharged);
      untried.addAll(alone.tried);
    }
  }

  void act(Action action) {
    String thing = action.thing().key();
    switch (action.kind()) {
      case SET ->
          positions.put(thing.substring(0, thing.lastIndexOf(' ')), thing.substring(thing.lastIndexOf(' ') + 1));
      case OPEN -> open.add(thing);
      case CLOSE -> open.remove(thing);
      case BYPASS -> bypassed.add(thing);
      case ISOLATE -> {
        isolate(thing);
        tagged.remove(thing);
      }
      case TAG_OUT -> {
        isolate(thing);
        tagged.add(thing);
      }
      case TRY -> {
        untried.remove(thing);
        if (!restored.contains(thing)) {
          tried.add(thing);
        }
      }
      case PROVE_DEAD -> provedDead = true;
      case DISCHARGE -> discharged.add(thing);
      case DISCONNECT -> {
        touch(thing);
        disconnected.add(thing);
      }
      case RECONNECT -> {
        touch(thing);
        disconnected.remove(thing);
      }
      case REPLACE, REPAIR -> {
        touch(thing);
        repaired = true;
        unchecked = true;
      }
      case RESTORE -> restore(thing);
      case KNOWN_SOURCE -> {}
    }
  }

  private void isolate(String source) {
    isolated.add(source);
    untried.add(source);
    tried.remove(source);
    restored.remove(source);
    poweredOff = true;
  }

  /** From a touch on a thing is taken for dead, so that one mistake is reported once. */
  private void touch(String thing) {
    poweredOff = true;
    provedDead = true;
    if (thing.contains("capacitor")) {
      discharged.add(thing);
    }
  }

  private void restore(String thing) {
    List.of(isolated, tagged, bypassed, open, disconnected, untried, tried).forEach(things -> things.remove(thing));
    restored.add(thing);
    if (sources.contains(thing)) {
      poweredOff = false;
      provedDead = false;
      discharged.clear();
    }
  }
}
