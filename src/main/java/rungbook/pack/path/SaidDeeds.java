package rungbook.pack.path;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.action.EquipmentCondition;
import rungbook.action.StateChange;
import rungbook.text.SearchWord;
import rungbook.tree.Action;

/**
 * Which actions the author's own words already name. An action counts as named by the last word of its object
 * ({@code disconnect} of {@code outdoor disconnect}), or by all of its words where the step has another object that ends
 * alike. A second action on one object also needs its own verb.
 */
public final class SaidDeeds {

  private static final int METER_TWICE = 2;

  private final Set<String> stems;
  private final boolean provesTheMeter;

  /** @param words the step's prose as HTML */
  public SaidDeeds(String words) {
    List<SearchWord> said = SearchWord.of(words.replaceAll("<[^>]*>", " "));
    this.stems = said.stream().map(SearchWord::stem).collect(Collectors.toSet());
    this.provesTheMeter = said.stream().filter(word -> word.stem().equals("meter")).count() >= METER_TWICE;
  }

  public boolean has(List<Action> actions, Action action) {
    if (action.kind().begins(EquipmentCondition.PROVED_DEAD) || action.kind().begins(EquipmentCondition.METER_PROVED)) {
      return provesTheMeter;
    }
    boolean again = actions.subList(0, actions.indexOf(action)).stream()
        .anyMatch(other -> other.key().equals(action.key()));
    return named(actions, action)
        && (!again || stems.containsAll(stems(action.kind().words()).limit(1).toList()));
  }

  private boolean named(List<Action> actions, Action action) {
    List<String> object = stems(object(action)).toList();
    String noun = object.get(object.size() - 1);
    boolean alone = actions.stream().filter(other -> !other.key().equals(action.key()))
        .noneMatch(other -> stems(object(other)).toList().contains(noun));
    return alone ? stems.contains(noun) : stems.containsAll(object);
  }

  /** Of a control, its position is what has to be said. */
  private static String object(Action action) {
    return action.changes().stream().filter(StateChange.SetPosition.class::isInstance)
        .map(change -> ((StateChange.SetPosition) change).position()).findFirst().orElse(action.key());
  }

  private static Stream<String> stems(String words) {
    return SearchWord.of(words).stream().map(SearchWord::stem);
  }
}
