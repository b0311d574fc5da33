package rungbook.pack.signature;

/** Why a text is not the key that is needed. Neither sentence has a period. */
public final class UnusableKeyException extends Exception {

  private static final long serialVersionUID = 1;

  private final String hint;

  UnusableKeyException(String says, String hint) {
    super(says, null, false, false);
    this.hint = hint;
  }

  /** How to fix it. */
  public String hint() {
    return hint;
  }
}
