package rungbook.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungbook.system.Names;
import rungbook.system.Vocabulary;
import rungbook.system.Vocabulary.Role;
import rungbook.tree.Deed;
import rungbook.tree.Verb;

/** The things done at a step as plain sentences, in the order done. */
final class Deeds {

  private static final String GROUND = "ground";

  private final Optional<Vocabulary> system;

  /** @param pairs what is tested pair by pair, {@code L1 to ground}; mostly none */
  record Sentence(String words, List<String> pairs) {
    Sentence(String words) {
      this(words, List.of());
    }
  }

  Deeds(Optional<Vocabulary> system) {
    this.system = system;
  }

  List<Sentence> sentences(List<Deed> deeds) {
    var sentences = new ArrayList<Sentence>();
    boolean proved = false;
    for (Deed deed : deeds) {
      if (deed.verb() != Verb.PROVE_DEAD && deed.verb() != Verb.KNOWN_SOURCE) {
        sentences.add(new Sentence(sentence(deed)));
      } else if (deed.verb() == Verb.PROVE_DEAD && !proved) {
        proved = true;
        sentences.addAll(proveDead(deeds));
      }
    }
    return sentences;
  }

  private String sentence(Deed deed) {
    String thing = deed.thing().text();
    return switch (deed.verb()) {
      case SET -> "Set: " + deed.setting().filter(setting -> system.isPresent()).map(setting -> setting.control() + " to " + setting.position()).orElse(thing);
      case OPEN -> "Open: " + thing;
      case CLOSE -> "Close: " + thing;
      case BYPASS -> "Defeat for this test only: " + thing;
      case ISOLATE -> "Switch off and lock: " + thing;
      case DISCHARGE -> "Discharge, then prove it flat on DC volts: " + thing;
      case DISCONNECT -> "Take off and keep clear: " + thing;
      case RECONNECT -> "Put back where it was: " + thing;
      case REPLACE -> "Replace: " + thing;
      case RESTORE -> restore(thing);
      case TAG_OUT -> "Leave off, locked and tagged: " + thing;
      case PROVE_DEAD -> "Prove dead: " + thing;
      case KNOWN_SOURCE -> "Known live source: " + thing;
    };
  }

  private String restore(String thing) {
    Optional<Role> role = system.map(known -> known.controls().get(Names.key(thing))).map(Vocabulary.Control::role);
    if (role.filter(Role.ISOLATOR::equals).isPresent()) {
      return "Take the lock off and switch on: " + thing;
    }
    return (role.filter(Role.INTERLOCK::equals).isPresent() ? "Take the bypass off: " : "Put back: ") + thing;
  }

  /** The meter is proved before and after, since a dead meter reads dead everywhere. */
  private static List<Sentence> proveDead(List<Deed> deeds) {
    String source = things(deeds, Verb.KNOWN_SOURCE).stream().findFirst().orElse("one that you know is live");
    return List.of(new Sentence("Prove the meter on a known live source: " + source),
        new Sentence("Test each pair on AC volts, phase to phase and phase to ground, and find nothing:", pairs(things(deeds, Verb.PROVE_DEAD))),
        new Sentence("Prove the meter again on the same source"));
  }

  private static List<String> things(List<Deed> deeds, Verb verb) {
    return deeds.stream().filter(deed -> deed.verb() == verb).map(deed -> deed.thing().text()).toList();
  }

  /** Every pair of the points, then each of them to ground, once. */
  static List<String> pairs(List<String> points) {
    List<String> phases = points.stream().filter(point -> !Names.key(point).equals(GROUND)).toList();
    var pairs = new ArrayList<String>();
    for (int i = 0; i < phases.size(); i++) {
      for (int j = i + 1; j < phases.size(); j++) {
        pairs.add(phases.get(i) + " to " + phases.get(j));
      }
    }
    phases.forEach(phase -> pairs.add(phase + " to " + GROUND));
    return pairs;
  }
}
