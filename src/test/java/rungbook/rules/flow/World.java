package rungbook.rules.flow;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rungbook.tree.Deed;
import rungbook.tree.Step;
import rungbook.tree.Tree;
import rungbook.tree.Verb;

/** The equipment as one person finds it who follows one path, by the words of docs/tree-text.md alone. */
final class World {

  final Set<String> sources;
  final Set<String> isolated = new HashSet<>();
  final Set<String> tagged = new HashSet<>();
  final Set<String> bypassed = new HashSet<>();
  final Set<String> open = new HashSet<>();
  final Set<String> disconnected = new HashSet<>();
  final Set<String> discharged = new HashSet<>();
  final Map<String, String> positions = new HashMap<>();
  boolean poweredOff;
  boolean provedDead;

  /** @param sources the names that the tree isolates somewhere */
  private World(Set<String> sources) {
    this.sources = sources;
  }

  static World before(Tree tree) {
    Set<String> sources = new HashSet<>();
    for (Step step : tree.steps()) {
      step.deeds().stream().filter(deed -> deed.verb() == Verb.ISOLATE || deed.verb() == Verb.TAG_OUT).forEach(deed -> sources.add(deed.thing().key()));
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
    copy.positions.putAll(positions);
    copy.poweredOff = poweredOff;
    copy.provedDead = provedDead;
    return copy;
  }

  /** Does a step and takes one of its ways. On one that says the proof failed, what the step itself proved is not proved. */
  void pass(Step step, String answer) {
    step.deeds().forEach(this::act);
    boolean proves = step.deeds().stream().anyMatch(deed -> deed.verb() == Verb.PROVE_DEAD || deed.verb() == Verb.DISCHARGE);
    if (proves && answer.equals("not dead")) {
      World alone = new World(sources);
      step.deeds().forEach(alone::act);
      provedDead &= !alone.provedDead;
      discharged.removeAll(alone.discharged);
    }
  }

  void act(Deed deed) {
    String thing = deed.thing().key();
    switch (deed.verb()) {
      case SET -> deed.setting().ifPresent(setting -> positions.put(setting.control(), setting.position()));
      case OPEN -> open.add(thing);
      case CLOSE -> open.remove(thing);
      case BYPASS -> bypassed.add(thing);
      case ISOLATE -> {
        isolated.add(thing);
        tagged.remove(thing);
        poweredOff = true;
      }
      case TAG_OUT -> {
        isolated.add(thing);
        tagged.add(thing);
        poweredOff = true;
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
      case REPLACE -> touch(thing);
      case RESTORE -> restore(thing);
      case KNOWN_SOURCE -> { }
    }
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
    List.of(isolated, tagged, bypassed, open, disconnected).forEach(things -> things.remove(thing));
    if (sources.contains(thing)) {
      poweredOff = false;
      provedDead = false;
      discharged.clear();
    }
  }
}
