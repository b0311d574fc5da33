package rungbook.source;

/** A place as people count it: line and column from 1, the column in code points. */
public record Place(int line, int column) {

  @Override
  public String toString() {
    return line + ":" + column;
  }
}
