package rungbook.store;

import rungbook.store.document.Outcome;
import rungbook.store.document.Revision;

/** Nothing was saved, because somebody else saved one of the documents first. */
public final class Overtaken extends RuntimeException {
  private final transient Revision current;

  private Overtaken(Revision current) {
    super("`" + current.path() + "` has a newer revision, " + current.number());
    this.current = current;
  }

  /** What they saved. */
  public Revision current() {
    return current;
  }

  static Outcome notIn(Outcome outcome) {
    if (outcome instanceof Outcome.Conflict conflict) {
      throw new Overtaken(conflict.current());
    }
    if (outcome instanceof Outcome.NotRemoved late) {
      throw new Overtaken(late.current());
    }
    return outcome;
  }
}
