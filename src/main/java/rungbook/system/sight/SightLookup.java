package rungbook.system.sight;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rungbook.source.Code;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.system.Names;
import rungbook.system.Vocabulary;

/** Looks up what is seen or not: a sight, {@code blower running}, or a value with its sight, {@code light steady}. */
public final class SightLookup {

  public static final Code UNKNOWN_SIGHT = Code.of("unknown-sight");
  public static final Code UNKNOWN_VALUE = Code.of("unknown-value");

  private static final int MOST_LISTED = 20;

  private SightLookup() {}

  /** What is wrong with a name; empty if the system has it. */
  public static Optional<Problem> inspect(Vocabulary system, String written, Span span, Source source) {
    String key = Names.key(written);
    if (system.sight(key).filter(sight -> sight.keys().contains(key)).isPresent()) {
      return Optional.empty();
    }
    return Optional.of(valued(system, key)
        .map(sight -> unknownValue(sight, key.equals(sight.key()) ? written : valueIn(written, sight), span, source))
        .orElseGet(() -> unknownSight(system, written, span, source)));
  }

  /** The sight with values that a name begins with. */
  private static Optional<Vocabulary.Sight> valued(Vocabulary system, String key) {
    return system.sights().values().stream()
        .filter(sight -> !sight.values().isEmpty() && (key + " ").startsWith(sight.key() + " ")).findFirst();
  }

  private static String valueIn(String written, Vocabulary.Sight sight) {
    return written.substring(Math.min(written.length(), sight.name().length())).strip();
  }

  private static Problem unknownSight(Vocabulary system, String written, Span span, Source source) {
    List<String> known = system.sightNames().stream().sorted().toList();
    return Problem.at(UNKNOWN_SIGHT, source, span).with("name", written).with("kind", "sight")
        .with("system", system.id()).with("known", listed(known)).near(written, Nearest.to(written, known));
  }

  /** @param written what is not one of the values of the sight */
  public static Problem unknownValue(Vocabulary.Sight sight, String written, Span span, Source source) {
    List<String> alike = sight.values().stream().filter(value -> digits(value).equals(digits(written))).toList();
    return Problem.at(UNKNOWN_VALUE, source, span).with("sight", sight.name()).with("name", written)
        .with("known", listed(sight.values())).near(written, Nearest.to(written, alike));
  }

  /** A code with another number is another code, not a slip of the pen. */
  private static String digits(String value) {
    return value.replaceAll("\\D", "");
  }

  /** Some of the known names: a hundred would bury the message. */
  private static String listed(List<String> known) {
    String first = known.stream().limit(MOST_LISTED).collect(Collectors.joining(", "));
    return known.size() <= MOST_LISTED ? first : first + " and " + (known.size() - MOST_LISTED) + " more";
  }
}
