package rungbook.source;

/** Where people look: line and column, both counted from 1, the column in code points. */
public record Place(int line, int column) {

  @Override
  public String toString() {
    return line + ":" + column;
  }
}
