package rungbook.pack.page;

import java.util.List;
import rungbook.text.Day;
import rungbook.tree.Tree;

/** What identifies a page, as in the corner of a drawing sheet: title at the top; system, meter, edition, digest. */
public final class TitleBlock {

  static final String BEFORE_TITLE = "<header><p class=\"mark\">" + Frame.LADDER + "Rungbook</p><h1>";
  static final String AFTER_COMPLAINT = "</p></header>\n";
  static final String BLOCK = "<dl class=\"block\">\n";
  static final String BEFORE_DIGEST = "<div><dt>Digest</dt><dd><code class=\"digest\">";
  static final String AFTER_DIGEST = "</code></dd></div></dl>\n";

  /** What a person fills in by hand at the end of the printed pages. Common practice, no source. */
  private static final List<String> SIGN_OFF = List.of("Job", "Date", "Found", "Replaced or repaired",
      "Left open, off or tagged", "Done by, license or certificate", "Under the supervision of", "Checked by");

  private TitleBlock() {}

  /** What a page begins with. */
  public static void head(Html html, String title, String summary) {
    html.raw(BEFORE_TITLE).text(title).close("h1").open("p", "class", "complaint").text(summary).raw(AFTER_COMPLAINT);
  }

  /** @param digest 64 hexadecimal digits */
  public static void of(Html html, Tree tree, Edition edition, String digest) {
    html.raw(BLOCK);
    cells(html, tree, edition);
    end(html, digest);
  }

  /**
   * Of one tree among others in a file, which has a digest of its own.
   *
   * @param digest of the tree's pack, 64 hexadecimal digits
   */
  public static void ofMany(Html html, Tree tree, Edition edition, String digest) {
    html.raw(BLOCK);
    cells(html, tree, edition);
    cell(html, "Digest of its pack", Digest.grouped(digest));
    html.raw("</dl>\n");
  }

  /** The edition comes last, beside the digest: a printed pack has both at the foot of each sheet. */
  private static void cells(Html html, Tree tree, Edition edition) {
    tree.system().ifPresent(system -> cell(html, "System", system.title()));
    cell(html, "Meter", tree.meter().title());
    cell(html, "Proof", edition.proof().orElse("not in this pack"));
    edition.renewAfter().ifPresent(day -> cell(html, "Look for a newer one after", Day.written(day)));
    cell(html, "Revision", edition.revision().orElse("draft"));
    cell(html, "Released", edition.released().map(Day::written).orElse("not released"));
  }

  /** A changed page can say anything of itself, so this one only says how others find out. */
  public static void checking(Html html) {
    html.open("p", "class", "checking")
        .text("This page cannot prove itself: a changed one can show any digest. Compare all six groups with those on "
            + "your company's list or server. Or, on a computer with the signature file beside this file: ")
        .element("code", "rungbook verify FILE --key company.pub").close("p").line();
  }

  /** Lines to sign on, for paper. */
  static void signOff(Html html) {
    html.open("section", "class", "signoff").element("h2", "Sign-off");
    SIGN_OFF.forEach(line -> html.element("p", line));
    html.close("section").line();
  }

  /** Of a list of trees. */
  public static void ofIndex(Html html) {
    html.raw(BLOCK);
    end(html, Digest.BLANK);
  }

  private static void end(Html html, String digest) {
    html.raw(BEFORE_DIGEST).raw(Digest.grouped(digest)).raw(AFTER_DIGEST);
  }

  private static void cell(Html html, String name, String words) {
    html.open("div").element("dt", name).element("dd", words).close("div").line();
  }
}
