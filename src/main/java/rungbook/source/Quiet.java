package rungbook.source;

import java.util.List;
import java.util.Optional;

/**
 * A code that an author has silenced at a place, with the reason: {@code quiet: check-tells-nothing, because …}.
 *
 * @param span the code, as it is written
 * @param within where in the text it counts; the spans do not overlap
 * @param removal the change that takes the code out again, where the line is written plainly
 */
public record Quiet(Code code, Source source, Span span, String reason, List<Span> within, Optional<Fix> removal) {

  public Quiet {
    within = List.copyOf(within);
  }
}
