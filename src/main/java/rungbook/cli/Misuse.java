package rungbook.cli;

/** The command line asks for something that cannot be: said without a final full stop, with how to put it right. */
final class Misuse extends RuntimeException {

  private static final long serialVersionUID = 1;

  static final int EXIT = 2;

  private final String hint;

  Misuse(String says, String hint) {
    super(says, null, false, false);
    this.hint = hint;
  }

  String hint() {
    return hint;
  }
}
