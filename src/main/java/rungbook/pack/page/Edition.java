package rungbook.pack.page;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Which edition of a tree a pack holds. Dates are given, never taken from a clock.
 *
 * @param revision the revision's name, {@code 4}; a draft may have none
 * @param released the day it was released; a draft has none, and the pack says so
 * @param renewAfter the day after which a reader looks for a newer one
 */
public record Edition(Optional<String> revision, Optional<LocalDate> released, Optional<LocalDate> renewAfter) {

  /** Not released yet. */
  public static Edition draft() {
    return new Edition(Optional.empty(), Optional.empty(), Optional.empty());
  }
}
