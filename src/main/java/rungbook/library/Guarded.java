package rungbook.library;

import java.util.function.Function;
import java.util.function.Supplier;
import rungbook.markdown.DocumentReader;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;

/**
 * Turns a crash on one text into a problem of that text. Readers and rules should never need this; it limits a bug in
 * them to one text instead of the whole library.
 */
final class Guarded {

  private Guarded() {}

  /** @param otherwise gives the result for a text that could not be processed */
  static <T> T read(Source source, Supplier<T> work, Function<Problem, T> otherwise) {
    try {
      return work.get();
    } catch (StackOverflowError deep) {
      return otherwise.apply(problem(source, "it nests too deep"));
    } catch (RuntimeException failed) {
      return otherwise.apply(problem(source, "the program fails at it (" + failed.getClass().getSimpleName() + ")"));
    }
  }

  private static Problem problem(Source source, String why) {
    return Problem.at(DocumentReader.TEXT_TOO_COSTLY, source, Span.at(0)).with("why", why);
  }
}
