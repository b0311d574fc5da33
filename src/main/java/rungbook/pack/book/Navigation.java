package rungbook.pack.book;

import java.util.List;
import rungbook.pack.page.Html;
import rungbook.text.UrlPath;

/** The table of contents and the landmarks (EPUB 3.3, section 7). */
final class Navigation {

  static final String FILE = "nav.xhtml";

  private Navigation() {}

  static String of(List<BookChapter> chapters) {
    var html = new Html();
    html.open("nav", "epub:type", "toc", "role", "doc-toc", "id", "toc").element("h1", "Contents").open("ol").line();
    entry(html, TitlePage.FILE, "Title page");
    chapters.forEach(chapter -> chapter(html, chapter));
    html.close("ol").close("nav").line();
    html.open("nav", "epub:type", "landmarks", "hidden", "hidden").element("h2", "Landmarks").open("ol").line();
    landmark(html, "titlepage", TitlePage.FILE, "Title page");
    landmark(html, "toc", FILE + "#toc", "Contents");
    chapters.stream().limit(1).forEach(first -> landmark(html, "bodymatter", first.file(), "First tree"));
    html.close("ol").close("nav").line();
    return BookPage.of("Contents", "epub:type=\"frontmatter\"", Xhtml.characters(html.toString()));
  }

  private static void chapter(Html html, BookChapter chapter) {
    html.open("li").element("a", chapter.title(), "href", chapter.file());
    if (!chapter.steps().isEmpty()) {
      html.open("ol").line();
      chapter.steps().forEach(step -> entry(html, chapter.file() + "#" + UrlPath.part(Anchors.of(step.anchor())),
          step.number() + " " + step.title()));
      html.close("ol");
    }
    html.close("li").line();
  }

  private static void entry(Html html, String address, String words) {
    html.open("li").element("a", words, "href", address).close("li").line();
  }

  private static void landmark(Html html, String type, String address, String words) {
    html.open("li").element("a", words, "epub:type", type, "href", address).close("li").line();
  }
}
