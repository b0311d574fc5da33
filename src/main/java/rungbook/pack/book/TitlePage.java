package rungbook.pack.book;

import java.util.List;
import rungbook.pack.LeftOut;
import rungbook.pack.page.Digest;
import rungbook.pack.page.Html;
import rungbook.pack.page.TreeText;

/** A book's first page: what comes before it, how it is read, its trees by complaint, and its digest. */
final class TitlePage {

  static final String FILE = "title.xhtml";

  private static final String HOW = "Start with the chapter of the complaint. Press an answer to go to the step it "
      + "leads to; the reader's back key returns. Each chapter begins with who may do the work and what can hurt.";

  private static final String DIGESTS = "The digest of a chapter is that of the tree's pack of the same edition. "
      + "Compare it with the one on the server or on the list.";

  private TitlePage() {}

  /** @param digest 64 hexadecimal digits */
  static String of(String title, List<BookChapter> chapters, List<LeftOut> leftOut, String digest) {
    var html = new Html();
    html.element("h1", title).line().element("p", TreeText.DEFERRAL, "class", "deferral").line();
    html.element("p", HOW).line();
    trees(html, chapters);
    leftOut(html, leftOut);
    html.element("h2", "About this book").line().open("dl", "class", "block");
    html.open("div").element("dt", "Digest of the book").open("dd").element("code", Digest.grouped(digest)).close("dd")
        .close("div").close("dl").line();
    html.element("p", DIGESTS).line();
    return BookPage.of(title, "epub:type=\"titlepage\"", Xhtml.characters(html.toString()));
  }

  private static void trees(Html html, List<BookChapter> chapters) {
    if (!chapters.isEmpty()) {
      html.element("h2", "Trees").line().open("ul", "class", "trees").line();
      chapters.forEach(chapter -> html.open("li").element("a", chapter.title(), "href", chapter.file()).text(" ")
          .element("span", chapter.complaint(), "class", "complaint").text(" ")
          .element("small", chapter.revision()).close("li").line());
      html.close("ul").line();
    }
  }

  private static void leftOut(Html html, List<LeftOut> leftOut) {
    if (!leftOut.isEmpty()) {
      html.element("h2", "Not in this book").line().element("p", "These trees have errors:").open("ul").line();
      leftOut.forEach(tree -> html.open("li").element("b", tree.title()).text(" (" + tree.path() + "): " + tree.why())
          .close("li").line());
      html.close("ul").line();
    }
  }
}
