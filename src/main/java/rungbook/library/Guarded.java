package rungbook.library;

import java.util.function.Function;
import java.util.function.Supplier;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;

/**
 * The one place where a text that defeats the program becomes a problem of that text. The readers and rules are made to
 * need no such place; it is there so that a mistake in them costs one text and not the library.
 */
final class Guarded {

  static final Code TEXT_TOO_COSTLY = Code.of("text-too-costly");

  private Guarded() {}

  /** @param otherwise what stands for the text when it cannot be worked through */
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
    return Problem.at(TEXT_TOO_COSTLY, source, Span.at(0)).with("why", why);
  }
}
