package rungbook.pack;

import java.nio.charset.StandardCharsets;
import java.util.List;
import rungbook.pack.page.FileNames;
import rungbook.pack.page.Frame;
import rungbook.pack.page.Html;
import rungbook.pack.page.PageForm;
import rungbook.pack.page.TitleBlock;
import rungbook.pack.practice.PracticePage;
import rungbook.pack.style.Assets;
import rungbook.text.English;

/** The page that lists a folder's packs. */
public final class IndexPage {

  private IndexPage() {}

  static byte[] of(List<Pack> packs, List<LeftOut> leftOut, List<PracticePage> practice) {
    Html html = new Html();
    Frame.head(html, "Rungbook library", Assets.PACK_STYLE, Assets.INDEX_SCRIPT, Frame.INDEX_POLICY);
    html.open("body", "data-file", FileNames.INDEX).line();
    TitleBlock.head(html, "The library", English.counted(packs.size(), "tree") + ", each a file of its own.");
    Frame.bar(html);
    html.open("main").open("div", "class", "index");
    TreeList list = TreeList.open(html);
    packs.forEach(pack -> list.entry(pack.title(), pack.complaint(), pack.steps(), FileNames.address(pack.tree()),
        pack.shortDigest()));
    list.close();
    practice(html, practice);
    TreeList.leftOut(html, leftOut, "they have no pack");
    TitleBlock.ofIndex(html);
    html.close("div").close("main").line();
    Frame.foot(html, Assets.INDEX_SCRIPT);
    PageForm blank = PageForm.of(html.toString().getBytes(StandardCharsets.UTF_8)).orElseThrow();
    return blank.with(blank.computed());
  }

  private static void practice(Html html, List<PracticePage> pages) {
    if (!pages.isEmpty()) {
      html.element("h2", "Practice").element("p", "Find a hidden fault with a meter, on a simulated system:");
      html.open("ul");
      pages.forEach(page -> html.open("li").element("a", page.title(), "href", page.address()).close("li").line());
      html.close("ul").line();
    }
  }
}
