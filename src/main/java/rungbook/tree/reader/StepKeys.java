package rungbook.tree.reader;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.action.ActionKind;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.tree.Step;
import rungbook.tree.StepTimer;

/** The keys allowed in a block or in front matter. */
public final class StepKeys {

  static final Code KEY_MISSING = Code.of("key-missing");
  static final Code UNKNOWN_KEY = Code.of("unknown-key");
  static final Code VALUE_MISSING = Code.of("value-missing");

  static final Set<String> FRONT = with(
      Set.of("title", "complaint", "system", "meter", TreeReader.NOT_FOR, "exits", QuietReader.KEY),
      Set.copyOf(SymptomsReader.KEYS));

  private static final Set<String> COMMON = Set.of("at", "minutes", "who", "cautions", QuietReader.KEY);
  private static final Set<
      String> ACTIONS = Arrays.stream(ActionKind.values()).map(ActionKind::words).collect(Collectors.toSet());
  private static final Set<String> CHECK = with(COMMON,
      Set.of("measure", "look", "listen", "smell", "feel", "ask", "leads", "expect", "with", Step.Check.AGAIN,
          StepTimer.Kind.LASTS.key()));
  private static final Set<String> TASK = with(with(COMMON, ACTIONS), Set.of(StepTimer.Kind.WAIT.key()));
  private static final Set<String> FINDING = with(with(COMMON, ACTIONS),
      Set.of("fault", "healthy", "refer", "evacuate", "guarded"));
  private static final Set<String> END = with(COMMON, Set.of("result", "refer", "guarded"));
  private static final Set<String> TAKE = with(COMMON, Set.of("fragment"));
  private static final Set<String> EXIT = Set.of("answer", QuietReader.KEY);

  private StepKeys() {}

  /** @param kind a step block's word: {@code check} */
  public static Set<String> of(String kind) {
    return switch (kind) {
      case "check" -> CHECK;
      case "task" -> TASK;
      case "finding" -> FINDING;
      case "end" -> END;
      case "take" -> TAKE;
      default -> EXIT;
    };
  }

  /** Reports unknown keys and missing values. */
  static void inspect(List<Entry> entries, Set<String> known, String where, Source source, Problems problems) {
    for (Entry entry : entries) {
      if (!known.contains(entry.key()) && known.stream().noneMatch(entry::is)) {
        problems.add(Problem.at(UNKNOWN_KEY, source, entry.keySpan()).with("key", entry.key()).with("where", where)
            .with("keys", known.stream().sorted().collect(Collectors.joining(", ")))
            .near(entry.key(), Nearest.to(entry.key(), known)));
      } else if (entry.value().isEmpty()) {
        problems.add(Problem.at(VALUE_MISSING, source, entry.keySpan()).with("key", entry.key()));
      }
    }
  }

  /** The problem of a required key that is missing. */
  public static Problem missing(String key, String where, Source source, Span span) {
    return Problem.at(KEY_MISSING, source, span).with("key", key).with("where", where);
  }

  private static Set<String> with(Set<String> one, Set<String> other) {
    return Stream.concat(one.stream(), other.stream()).collect(Collectors.toUnmodifiableSet());
  }
}
