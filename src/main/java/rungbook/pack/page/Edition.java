package rungbook.pack.page;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Which edition of a tree a pack holds. Dates are given, never taken from a clock.
 *
 * @param revision the revision's name, {@code 4}; a draft may have none
 * @param released the day it was released; a draft has none, and the pack says so
 * @param renewAfter the day after which a reader looks for a newer one
 * @param proof the tree's state with its proof, in words; empty if the pack was made without it
 */
public record Edition(Optional<String> revision, Optional<LocalDate> released, Optional<LocalDate> renewAfter,
    Optional<String> proof) {

  /** Without a proof. */
  public Edition(Optional<String> revision, Optional<LocalDate> released, Optional<LocalDate> renewAfter) {
    this(revision, released, renewAfter, Optional.empty());
  }

  /** Not released yet. */
  public static Edition draft() {
    return new Edition(Optional.empty(), Optional.empty(), Optional.empty());
  }

  public Edition proved(String state) {
    return new Edition(revision, released, renewAfter, Optional.of(state));
  }
}
