package rungbook.pack;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import rungbook.pack.style.Assets;
import rungbook.pack.page.FileNames;
import rungbook.pack.page.Frame;
import rungbook.pack.page.Html;
import rungbook.pack.page.PageForm;
import rungbook.pack.page.TitleBlock;
import rungbook.text.English;
import rungbook.text.InlineCode;
import rungbook.text.SearchEntry;
import rungbook.text.SearchWord;

/** The page that lists a folder's packs: a plain list, which its script searches. */
public final class IndexPage {

  private IndexPage() {}

  static byte[] of(List<Pack> packs, List<LeftOut> leftOut) {
    Html html = new Html();
    Frame.head(html, "Rungbook library", Assets.PACK_STYLE, Assets.INDEX_SCRIPT, Frame.INDEX_POLICY);
    html.open("body", "data-file", FileNames.INDEX).line();
    TitleBlock.head(html, "The library", English.counted(packs.size(), "tree") + ", each a file of its own.");
    Frame.bar(html);
    html.open("main").open("div", "class", "index");
    html.open("ul", "class", "ways trees").line();
    packs.forEach(pack -> entry(html, pack));
    html.close("ul").line();
    if (!leftOut.isEmpty()) {
      leftOut(html, leftOut);
    }
    TitleBlock.ofIndex(html);
    html.close("div").close("main").line();
    Frame.foot(html, Assets.INDEX_SCRIPT);
    PageForm blank = PageForm.of(html.toString().getBytes(StandardCharsets.UTF_8)).orElseThrow();
    return blank.with(blank.computed());
  }

  private static void leftOut(Html html, List<LeftOut> trees) {
    html.element("h2", "Left out").element("p", "These trees of the library have errors, so they have no pack:");
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

  private static void entry(Html html, Pack pack) {
    SearchEntry words = SearchEntry.of(pack.title(), pack.complaint(), pack.steps());
    html.open("li", "data-said", words(words.said()), "data-steps", words(words.steps()));
    html.open("a", "class", "way", "href", FileNames.address(pack.tree()));
    html.element("b", pack.title()).text(" ");
    html.open("span").text(pack.complaint()).text(" ").element("small", pack.shortDigest()).close("span");
    html.close("a").close("li").line();
  }

  /** Each word once, as the script reads it: {@code stopping/stop}, or {@code fan} where the stem is the word. */
  private static String words(List<SearchWord> words) {
    return words.stream().map(word -> word.word().equals(word.stem()) ? word.word() : word.word() + "/" + word.stem())
        .distinct()
        .collect(Collectors.joining(" "));
  }
}
