package rungbook.pack;

import java.util.Map;
import java.util.Optional;
import rungbook.pack.page.Digest;
import rungbook.pack.page.PageForm;

/** Whether a file is an unaltered pack or list of packs. Detects damage and changes, not who wrote the file. */
public final class Verify {

  private Verify() {}

  /** What a file is. */
  public sealed interface Verdict {

    /**
     * Every byte is as it was written.
     *
     * @param digest 64 hexadecimal digits
     * @param file the page's own name in a folder of packs
     * @param cells what else its title block says, by the name of the cell
     */
    record Intact(String digest, String file, String title, Map<String, String> cells) implements Verdict {

      /** The start of the digest in groups, as people compare it. */
      public String shortDigest() {
        return Digest.grouped(digest);
      }
    }

    /** Something was changed. */
    record Altered(Flaw flaw) implements Verdict {}

    record NotAPack() implements Verdict {}
  }

  /** What is not as a pack is written. */
  public enum Flaw {
    BEGINNING("it does not begin with the head and the title block of a pack"),
    TWO_DIGESTS("it shows a digest outside its title block"),
    STYLE_OR_SCRIPT("its style, its script or its end is not as it was written"),
    CONTENT("its content does not give the digest that it states"),
    SHORT_DIGEST("the digest in its title block is not the one that its content gives");

    private final String says;

    Flaw(String says) {
      this.says = says;
    }

    /** In words, without a full stop. */
    public String says() {
      return says;
    }
  }

  public static Verdict of(byte[] file) {
    Optional<PageForm> form = PageForm.of(file);
    if (form.isEmpty()) {
      return PageForm.isClaimed(file) ? new Verdict.Altered(Flaw.BEGINNING) : new Verdict.NotAPack();
    }
    return flaw(form.get()).<Verdict>map(Verdict.Altered::new).orElseGet(() -> intact(form.get()));
  }

  private static Optional<Flaw> flaw(PageForm form) {
    if (!form.hasOneDigest()) {
      return Optional.of(Flaw.TWO_DIGESTS);
    }
    if (!form.isClosed()) {
      return Optional.of(Flaw.STYLE_OR_SCRIPT);
    }
    if (!form.computed().equals(form.stated())) {
      return Optional.of(Flaw.CONTENT);
    }
    return form.shown().equals(Digest.grouped(form.stated())) ? Optional.empty() : Optional.of(Flaw.SHORT_DIGEST);
  }

  private static Verdict intact(PageForm form) {
    PageForm.Identity identity = form.identity();
    return new Verdict.Intact(form.stated(), identity.file(), identity.title(), identity.cells());
  }
}
