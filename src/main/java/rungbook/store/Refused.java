package rungbook.store;

/** Something that the library does not take in: what is wrong with it, and how to put it right. */
public final class Refused extends IllegalArgumentException {
  private final String hint;

  Refused(String wrong, String hint) {
    super(wrong);
    this.hint = hint;
  }

  public String hint() {
    return hint;
  }
}
