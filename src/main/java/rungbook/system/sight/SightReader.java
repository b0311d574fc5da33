package rungbook.system.sight;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.system.Condition;
import rungbook.system.ControlSystem.SightCondition;
import rungbook.system.Names;
import rungbook.system.Vocabulary;

/** Reads the lines of {@code sights}: when each is seen, or each of its values. */
public final class SightReader {

  static final Code SIGHT_VALUES = Code.of("sight-values");

  /** More than any board has codes. */
  private static final int MOST_VALUES = 64;

  private static final int LONGEST_VALUE = 60;

  /** What answers of a check mean by themselves. */
  private static final Set<String> RESERVED = Set.of("any", "anything else", "yes", "no");

  private final Vocabulary vocabulary;
  private final Function<Entry.Item, Condition> conditions;
  private final Source source;
  private final Consumer<Problem> problems;

  /**
   * Creates a reader.
   *
   * @param conditions reads a condition, and reports what is wrong with it
   */
  public SightReader(Vocabulary vocabulary, Function<Entry.Item, Condition> conditions, Source source,
      Consumer<Problem> problems) {
    this.vocabulary = vocabulary;
    this.conditions = conditions;
    this.source = source;
    this.problems = problems;
  }

  /** When the sight is seen, or each value of it; none where the text does not say. */
  public List<SightCondition> read(Entry entry) {
    SightLine line = SightLine.of(entry, vocabulary.locations().keySet());
    if (line.values().isEmpty()) {
      return line.when().map(when -> new SightCondition(entry.key(), conditions.apply(when))).stream().toList();
    }
    List<Condition> stated = line.values().stream()
        .map(value -> value.when().map(conditions).orElse(Condition.never())).toList();
    return isSound(line) && line.values().stream().anyMatch(value -> value.when().isPresent()) ? shown(line, stated)
        : List.of();
  }

  /** Each value where its condition holds; the first without a condition where none of them does. */
  private static List<SightCondition> shown(SightLine line, List<Condition> stated) {
    List<SightCondition> all = new ArrayList<>();
    boolean hasRest = false;
    for (int i = 0; i < stated.size(); i++) {
      SightLine.Value value = line.values().get(i);
      boolean isRest = value.when().isEmpty() && !hasRest;
      hasRest |= isRest;
      all.add(new SightCondition(line.entry().key() + " " + value.name(), isRest ? none(stated) : stated.get(i)));
    }
    return all;
  }

  private static Condition none(List<Condition> of) {
    return new Condition.Not(new Condition.Any(of));
  }

  private boolean isSound(SightLine line) {
    Optional<Flaw> flaw = flaw(line);
    flaw.ifPresent(found -> problems.accept(Problem.at(SIGHT_VALUES, source, found.at())
        .with("name", line.entry().key()).with("what", found.what())));
    return flaw.isEmpty();
  }

  private record Flaw(Span at, String what) {}

  private static Optional<Flaw> flaw(SightLine line) {
    List<SightLine.Value> values = line.values();
    if (line.when().isPresent()) {
      return Optional.of(new Flaw(line.when().get().span(), "has values, and a `when` that belongs to none of them"));
    }
    if (values.size() < 2 || values.size() > MOST_VALUES) {
      return Optional.of(new Flaw(values.get(0).item().span(),
          values.size() < 2 ? "has one value only, `" + values.get(0).name() + "`"
              : "has more than " + MOST_VALUES + " values"));
    }
    Optional<Flaw> wrong = values.stream().flatMap(value -> flaw(value).stream()).findFirst()
        .or(() -> twice(values));
    boolean hasRest = values.stream().anyMatch(value -> value.when().isEmpty());
    return wrong.or(() -> hasRest ? Optional.empty()
        : Optional
            .of(new Flaw(line.entry().keySpan(), "has no value that it shows when none of its conditions holds")));
  }

  private static Optional<Flaw> flaw(SightLine.Value value) {
    String what = value.name().isEmpty() ? "has a value without a name"
        : RESERVED.contains(value.key()) ? "has a value `" + value.name() + "`, which is an answer of its own"
            : value.name().length() > LONGEST_VALUE ? "has a value of more than " + LONGEST_VALUE + " characters" : "";
    return what.isEmpty() ? Optional.empty() : Optional.of(new Flaw(value.item().span(), what));
  }

  private static Optional<Flaw> twice(List<SightLine.Value> values) {
    var seen = new HashSet<String>();
    return values.stream().filter(value -> !seen.add(Names.key(value.name()))).findFirst()
        .map(value -> new Flaw(value.item().span(), "names the value `" + value.name() + "` twice"));
  }
}
