package rungbook.store.document;

/** Something that the library does not take in: what is wrong with it, and how to put it right. */
public sealed class Refused extends IllegalArgumentException permits Refused.TooLarge, Refused.NotThere {
  private final String hint;

  public Refused(String wrong, String hint) {
    super(wrong);
    this.hint = hint;
  }

  public String hint() {
    return hint;
  }

  /** It is larger than the library takes in. */
  public static final class TooLarge extends Refused {
    TooLarge(String wrong, String hint) {
      super(wrong, hint);
    }
  }

  /** It concerns a document that never was in the library. */
  public static final class NotThere extends Refused {
    public NotThere(DocumentPath path) {
      super("`" + path + "` is not in the library", "look for it in the library, or write it anew");
    }
  }
}
