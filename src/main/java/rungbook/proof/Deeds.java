package rungbook.proof;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import rungbook.circuit.CircuitState;
import rungbook.system.Names;
import rungbook.system.Vocabulary;
import rungbook.tree.Deed;
import rungbook.tree.Step;
import rungbook.tree.Verb;

/** What tasks do to the equipment. */
final class Deeds {

  private final Vocabulary words;

  Deeds(Vocabulary words) {
    this.words = words;
  }

  /** How a task leaves the equipment. @param place where the work is done */
  CircuitState after(CircuitState before, Step.Task task, String place) {
    CircuitState state = before;
    for (Deed deed : task.deeds()) {
      state = after(state, deed, place);
    }
    return state;
  }

  private CircuitState after(CircuitState s, Deed deed, String place) {
    String key = deed.thing().key();
    return switch (deed.verb()) {
      case SET -> deed.setting().map(setting -> set(s, setting.control(), setting.position())).orElse(s);
      case OPEN -> with(s, Verb.OPEN, set -> plus(set, key));
      case CLOSE -> with(s, Verb.OPEN, set -> minus(set, key));
      case BYPASS -> with(s, Verb.BYPASS, set -> plus(set, key));
      case ISOLATE, TAG_OUT -> with(s, Verb.ISOLATE, set -> plus(set, key));
      case DISCONNECT -> with(s, Verb.DISCONNECT, set -> plus(set, loose(key, place)));
      case RECONNECT -> with(s, Verb.DISCONNECT, set -> minus(set, loose(key, place)));
      case REPLACE -> with(s, Verb.REPLACE, set -> plus(set, key));
      case RESTORE -> restore(s, key, place);
      case PROVE_DEAD, DISCHARGE, KNOWN_SOURCE -> s;
    };
  }

  private CircuitState restore(CircuitState s, String key, String place) {
    UnaryOperator<Set<String>> gone = set -> minus(set, key);
    CircuitState open = with(s, Verb.OPEN, gone);
    CircuitState bypassed = with(open, Verb.BYPASS, gone);
    CircuitState isolated = with(bypassed, Verb.ISOLATE, gone);
    return with(isolated, Verb.DISCONNECT, set -> minus(set, loose(key, place)));
  }

  private static CircuitState set(CircuitState s, String control, String position) {
    Map<String, String> positions = new HashMap<>(s.positions());
    positions.put(control, position);
    return new CircuitState(positions, s.off(), s.bypassed(), s.disconnected(), s.open(), s.replaced());
  }

  private static CircuitState with(CircuitState s, Verb verb, UnaryOperator<Set<String>> change) {
    return new CircuitState(s.positions(),
        verb == Verb.ISOLATE ? change.apply(s.off()) : s.off(),
        verb == Verb.BYPASS ? change.apply(s.bypassed()) : s.bypassed(),
        verb == Verb.DISCONNECT ? change.apply(s.disconnected()) : s.disconnected(),
        verb == Verb.OPEN ? change.apply(s.open()) : s.open(),
        verb == Verb.REPLACE ? change.apply(s.replaced()) : s.replaced());
  }

  /** What comes off: a part by its name, a terminal by its name and where it is. */
  private String loose(String key, String place) {
    Vocabulary.Point point = words.points().get(key);
    if (words.parts().containsKey(key) || point == null) {
      return key;
    }
    boolean onePlace = point.locations().size() == 1;
    return key + " at " + (onePlace ? point.locations().iterator().next() : Names.key(place));
  }

  private static Set<String> plus(Set<String> set, String key) {
    Set<String> more = new HashSet<>(set);
    more.add(key);
    return more;
  }

  private static Set<String> minus(Set<String> set, String key) {
    Set<String> less = new HashSet<>(set);
    less.remove(key);
    return less;
  }
}
