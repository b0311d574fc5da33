package rungbook.store.document;

/** Something that the library refuses: what is wrong with it, and how to fix it. */
public sealed class Refused extends IllegalArgumentException permits Refused.TooLarge, Refused.NotThere {
  private final String says;
  private final String hint;

  public Refused(String wrong, String hint) {
    super(wrong);
    this.says = wrong;
    this.hint = hint;
  }

  /** What is wrong, as a sentence. */
  public String says() {
    return says;
  }

  /** How to fix it. */
  public String hint() {
    return hint;
  }

  /** It is larger than the limit. */
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
