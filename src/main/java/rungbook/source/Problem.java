package rungbook.source;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A problem as data: its code, its place, and the facts that its sentence needs. The wording is in the code's page.
 *
 * @param code what kind of problem it is; the page of that name words it
 * @param facts what fills the blanks in the sentence, by name
 * @param fix a change that removes it, where one is known
 */
public record Problem(Code code, Source source, Span span, Map<String, String> facts, Optional<Witness> witness,
    Optional<Fix> fix) {

  /** Sorts by file, then place, then code. */
  public static final Comparator<Problem> IN_READING_ORDER = Comparator
      .<Problem, String>comparing(p -> p.source().name()).thenComparing(Problem::span).thenComparing(Problem::code);

  public Problem {
    facts = Map.copyOf(facts);
  }

  public static Problem at(Code code, Source source, Span span) {
    return new Problem(code, source, span, Map.of(), Optional.empty(), Optional.empty());
  }

  public Problem with(String name, Object value) {
    var more = new LinkedHashMap<>(facts);
    more.put(name, String.valueOf(value));
    return new Problem(code, source, span, more, witness, fix);
  }

  /**
   * Adds the nearest known name, if there is one, and the fix that writes it.
   *
   * @param written the unknown name as it is in the text
   */
  public Problem near(String written, Optional<String> nearest) {
    return nearest.map(name -> with("near", name).fixedBy(Fix.rename(source, span, written, name))).orElse(this);
  }

  /** Adds the change that removes the problem, where one is known. */
  public Problem fixedBy(Optional<Fix> known) {
    return new Problem(code, source, span, facts, witness, known);
  }

  public Problem shownBy(Witness shown) {
    return shownBy(Optional.of(shown));
  }

  /** Adds the witness that shows the problem, if there is one. */
  public Problem shownBy(Optional<? extends Witness> shown) {
    return new Problem(code, source, span, facts, shown.map(one -> one), fix);
  }

  public Place place() {
    return source.placeAt(span.start());
  }
}
