package rungbook.store;

/** A text that names no place in a library: what is wrong with it, and how to put it right. */
public final class BadPath extends IllegalArgumentException {
  private final String hint;

  BadPath(String path, String wrong, String hint) {
    super("`" + path + "` " + wrong);
    this.hint = hint;
  }

  public String hint() {
    return hint;
  }
}
