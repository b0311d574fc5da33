package rungbook.pack;

import java.nio.charset.StandardCharsets;
import java.util.List;

/** The page that lists a folder's packs: a plain list, which its script searches. */
final class IndexPage {

  private IndexPage() {}

  static byte[] of(List<Pack> packs) {
    Html html = new Html();
    Frame.head(html, "Rungbook library", Digest.fullPlace(), Assets.PACK_STYLE, Assets.INDEX_SCRIPT,
        "; worker-src 'self'; manifest-src 'self'");
    html.open("body").open("header").open("p", "class", "mark").raw(Frame.LADDER).text("Rungbook").close("p");
    html.element("h1", "The library").element("p", packs.size() + (packs.size() == 1 ? " tree" : " trees") + ", each a file of its own.",
        "class", "complaint");
    html.open("dl").open("div").element("dt", "Digest of this list").open("dd").raw(Digest.shortPlace()).close("dd").close("div").close("dl");
    html.close("header").line().open("main").open("div", "class", "index");
    html.open("ul", "class", "ways trees").line();
    packs.forEach(pack -> entry(html, pack));
    html.close("ul").close("div").close("main").line();
    Frame.foot(html, Assets.INDEX_SCRIPT);
    byte[] blank = html.toString().getBytes(StandardCharsets.UTF_8);
    return Digest.fill(blank, Digest.of(blank));
  }

  private static void entry(Html html, Pack pack) {
    html.open("li").open("a", "class", "way", "href", FileNames.address(pack.tree()));
    html.element("b", pack.title()).text(" ");
    html.open("span").text(pack.complaint()).text(" ").element("small", Digest.shortened(pack.digest())).close("span");
    html.close("a").close("li").line();
  }
}
