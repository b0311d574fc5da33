package rungbook.ladder;

/** Counts the rungs of a drawing. */
final class RungNumbers {

  private int last;

  int next() {
    return ++last;
  }
}
