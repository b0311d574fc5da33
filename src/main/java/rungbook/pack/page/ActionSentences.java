package rungbook.pack.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rungbook.action.EquipmentCondition;
import rungbook.action.StateChange;
import rungbook.pack.path.ProvedPairs;
import rungbook.pack.path.SaidDeeds;
import rungbook.system.Names;
import rungbook.system.Vocabulary.Role;
import rungbook.system.Vocabulary;
import rungbook.tree.Action;

/** The things done at a step as plain sentences, in the order done. */
final class ActionSentences {

  private final Optional<Vocabulary> system;

  /** @param pairs what is tested pair by pair, {@code L1 to ground}; mostly none */
  record Sentence(String words, List<String> pairs) {
    Sentence(String words) {
      this(words, List.of());
    }
  }

  ActionSentences(Optional<Vocabulary> system) {
    this.system = system;
  }

  /** Those that the author's own words leave out: a deed is said once. */
  List<Sentence> unsaid(List<Action> actions, SaidDeeds said) {
    return of(IntStream.range(0, actions.size()).filter(number -> !said.has(actions, number)).mapToObj(actions::get)
        .toList());
  }

  /** The points to prove dead, as written. */
  static List<String> points(List<Action> actions) {
    return things(actions, EquipmentCondition.PROVED_DEAD);
  }

  List<Sentence> of(List<Action> actions) {
    var sentences = new ArrayList<Sentence>();
    boolean proved = false;
    boolean provesAny = !points(actions).isEmpty();
    for (Action action : actions) {
      boolean proves = action.kind().begins(EquipmentCondition.PROVED_DEAD);
      if (proves && !proved) {
        proved = true;
        sentences.addAll(proveDead(actions));
      } else if (!proves && !(provesAny && action.kind().begins(EquipmentCondition.METER_PROVED)) && !isStage(action)) {
        sentences.add(new Sentence(sentence(action)));
      }
    }
    return sentences;
  }

  private String sentence(Action action) {
    return action.kind().instruction(role(action.key())) + ": " + thing(action);
  }

  /** A stage comes by itself: nobody can set it, and the step's prose says what to wait for. */
  private boolean isStage(Action action) {
    return action.changes().stream().anyMatch(change -> change instanceof StateChange.SetPosition set
        && role(Names.key(set.control())).equals(Optional.of(Role.STAGE)));
  }

  private Optional<Role> role(String key) {
    return system.map(known -> known.controls().get(key)).map(Vocabulary.Control::role);
  }

  /** A setting's control and position are told apart only where a system says which controls there are. */
  private String thing(Action action) {
    for (StateChange change : action.changes()) {
      if (system.isPresent() && change instanceof StateChange.SetPosition set) {
        return set.control() + " to " + set.position();
      }
    }
    return action.thing().text();
  }

  /** The meter is proved before and after, since a dead meter reads dead everywhere. */
  private static List<Sentence> proveDead(List<Action> actions) {
    String source = things(actions, EquipmentCondition.METER_PROVED).stream().findFirst()
        .orElse("one that you know is live");
    return List.of(new Sentence("Prove the meter on a known live source: " + source),
        new Sentence("Test each pair on AC volts, leg to leg and each leg to ground, and read no voltage:",
            ProvedPairs.all(points(actions))),
        new Sentence("Prove the meter again on the same source"));
  }

  private static List<String> things(List<Action> actions, EquipmentCondition begun) {
    return actions.stream().filter(action -> action.kind().begins(begun)).map(action -> action.thing().text()).toList();
  }
}
