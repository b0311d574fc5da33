package rungbook.web.record;

/** A text that is no field record: what is wrong with it, and how to put it right. */
public final class RecordFault extends IllegalArgumentException {

  private final String wrong;
  private final String hint;

  RecordFault(String wrong, String hint) {
    super(wrong);
    this.wrong = wrong;
    this.hint = hint;
  }

  /** What is wrong, as a sentence without its end. */
  public String says() {
    return wrong;
  }

  public String hint() {
    return hint;
  }
}
