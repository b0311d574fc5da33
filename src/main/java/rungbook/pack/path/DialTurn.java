package rungbook.pack.path;

/** What has to be done to the meter's dial at a step. */
public enum DialTurn {
  /** Nothing: it is where it was on every path. */
  NONE(""),
  /** It is set for the first time. */
  SET("Set dial"),
  /** It was elsewhere on every path. */
  TURN("Turn dial"),
  /** That depends on the path. */
  LOOK("Check dial");

  private final String words;

  DialTurn(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
