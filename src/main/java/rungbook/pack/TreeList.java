package rungbook.pack;

import java.util.List;
import java.util.stream.Collectors;
import rungbook.pack.page.Html;
import rungbook.text.InlineCode;
import rungbook.text.SearchEntry;
import rungbook.text.SearchWord;
import rungbook.text.Symptom;

/** Trees by complaint, as links: a plain list, which a script searches. */
public final class TreeList {

  private final Html html;

  private TreeList(Html html) {
    this.html = html;
  }

  public static TreeList open(Html html) {
    html.open("ul", "class", "ways trees", "data-symptoms",
        Symptom.ALL.stream().map(Symptom::words).collect(Collectors.joining(";")),
        "data-left-out", SearchEntry.leftOut()).line();
    return new TreeList(html);
  }

  /**
   * @param steps the titles of its steps
   * @param note what tells this edition apart
   */
  public void entry(String title, String complaint, List<String> steps, String address, String note) {
    SearchEntry words = SearchEntry.of(title, complaint, steps);
    html.open("li", "data-title", words(words.title()), "data-said",
        words(words.said()), "data-near", words(words.near()), "data-steps", words(words.steps()), "data-symptoms",
        Symptom.in(complaint).stream().map(String::valueOf).collect(Collectors.joining(" ")));
    html.open("a", "class", "way", "href", address);
    html.element("b", title).text(" ");
    html.open("span").text(complaint).text(" ").element("small", note).close("span");
    html.close("a").close("li").line();
  }

  public void close() {
    html.close("ul").line();
  }

  /**
   * The trees that have errors.
   *
   * @param so what follows from that
   */
  public static void leftOut(Html html, List<LeftOut> trees, String so) {
    if (trees.isEmpty()) {
      return;
    }
    html.element("h2", "Left out").element("p", "These trees of the library have errors, so " + so + ":");
    html.open("ul");
    for (LeftOut tree : trees) {
      html.open("li").element("b", tree.title()).text(" (").element("code", tree.path()).text("): ");
      InlineCode.parts(tree.why()).forEach(part -> {
        if (part.code()) {
          html.element("code", part.text());
        } else {
          html.text(part.text());
        }
      });
      html.close("li").line();
    }
    html.close("ul").line();
  }

  /** Each word once, as the script reads it: {@code stopping/stop}, or {@code fan} where the stem is the word. */
  private static String words(List<SearchWord> words) {
    return words.stream().map(word -> word.word().equals(word.stem()) ? word.word() : word.word() + "/" + word.stem())
        .distinct().collect(Collectors.joining(" "));
  }
}
