package rungbook.system.sight;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import rungbook.markdown.Entry;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.system.Condition;
import rungbook.system.ControlSystem.SightCondition;
import rungbook.system.Effect;
import rungbook.system.Fault;
import rungbook.system.Names;
import rungbook.system.Vocabulary;

/**
 * Reads what a fault shows by itself: {@code show air filter dirty}, {@code hide gas meter turning}, {@code show
 * status light 3 flashes when limit open}.
 */
public final class ShownSights {

  private final Vocabulary vocabulary;
  private final Function<Entry.Item, Condition> conditions;
  private final Source source;
  private final Consumer<Problem> problems;

  /**
   * Creates a reader.
   *
   * @param conditions reads a condition, and reports what is wrong with it
   */
  public ShownSights(Vocabulary vocabulary, Function<Entry.Item, Condition> conditions, Source source,
      Consumer<Problem> problems) {
    this.vocabulary = vocabulary;
    this.conditions = conditions;
    this.source = source;
    this.problems = problems;
  }

  /** What is seen and what is not: a value that is shown takes the place of the others. */
  public List<Effect> read(Showing showing, Span span) {
    Optional<Problem> wrong = SightLookup.inspect(vocabulary, showing.what(), span, source);
    if (wrong.isPresent()) {
      problems.accept(wrong.get());
      return List.of();
    }
    String key = Names.key(showing.what());
    Condition when = showing.when().map(conditions).orElse(Condition.always());
    return showing.isShown() ? vocabulary.sight(key).orElseThrow().keys().stream()
        .map(one -> (Effect) new Effect.Show(one, one.equals(key), when)).toList()
        : List.of(new Effect.Show(key, false, when));
  }

  /**
   * The sights of the system, and those that only a fault sets. Such a sight is seen if faults only hide it, and not
   * seen otherwise; of values without a condition the first is.
   */
  public static List<SightCondition> with(List<SightCondition> stated, Vocabulary vocabulary, List<Fault> faults) {
    Set<String> known = stated.stream().map(one -> Names.key(one.name())).collect(Collectors.toSet());
    Set<String> shown = new LinkedHashSet<>();
    Set<String> hidden = new LinkedHashSet<>();
    faults.stream().flatMap(fault -> fault.effects().stream()).filter(Effect.Show.class::isInstance)
        .map(Effect.Show.class::cast).forEach(show -> (show.seen() ? shown : hidden).add(show.sight()));
    List<SightCondition> all = new ArrayList<>(stated);
    vocabulary.sights().values().stream()
        .filter(sight -> sight.keys().stream().anyMatch(key -> shown.contains(key) || hidden.contains(key)))
        .filter(sight -> sight.keys().stream().noneMatch(known::contains))
        .forEach(sight -> add(sight, !shown.contains(sight.key()), all));
    return all;
  }

  private static void add(Vocabulary.Sight sight, boolean isUsual, List<SightCondition> all) {
    Condition usual = isUsual ? Condition.always() : Condition.never();
    if (sight.values().isEmpty()) {
      all.add(new SightCondition(sight.name(), usual));
    }
    for (String value : sight.values()) {
      boolean isFirst = value.equals(sight.values().get(0));
      all.add(new SightCondition(sight.name() + " " + value, isFirst ? Condition.always() : Condition.never()));
    }
  }
}
