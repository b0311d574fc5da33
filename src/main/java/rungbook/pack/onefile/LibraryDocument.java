package rungbook.pack.onefile;

import java.util.List;
import java.util.Map;
import rungbook.pack.LeftOut;
import rungbook.pack.PackedTree;
import rungbook.pack.TreeList;
import rungbook.pack.drawing.RepeatedDrawings;
import rungbook.pack.page.Digest;
import rungbook.pack.page.FileNames;
import rungbook.pack.page.Frame;
import rungbook.pack.page.Html;
import rungbook.pack.page.PackInput;
import rungbook.pack.page.TitleBlock;
import rungbook.pack.page.TreeText;
import rungbook.pack.style.Assets;
import rungbook.text.English;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * The whole page of a library, one long document: the list of complaints, what all trees name in common, then each
 * tree.
 *
 * @param titles of the trees, by id
 */
record LibraryDocument(List<PackedTree> trees, ShortAnchors anchors, Map<String, String> titles, PackInput material) {

  private static final String TITLE = "Rungbook library";

  /** The page with the places of its digest still empty. */
  String of(List<LeftOut> leftOut) {
    var html = new Html();
    Frame.head(html, TITLE, Assets.PACK_STYLE, Assets.LIBRARY_SCRIPT, "");
    html.open("body", "data-file", FileNames.LIBRARY).line();
    TitleBlock.head(html, TITLE, English.counted(trees.size(), "tree") + " in one file.");
    Frame.bar(html);
    html.open("main").line();
    start(html, leftOut);
    var circuits = new LibraryCircuits();
    html.raw(ShortMarkup.of(RepeatedDrawings.once(common() + all(circuits) + circuits.ladders()))).close("main").line();
    Frame.foot(html, Assets.LIBRARY_SCRIPT);
    return html.toString();
  }

  private void start(Html html, List<LeftOut> leftOut) {
    html.open("section", "class", "page start list", "id", ":start");
    html.element("p", TreeText.DEFERRAL, "class", "deferral").line();
    TreeList.leftOut(html, leftOut, "they are not in this file");
    TreeList list = TreeList.open(html);
    trees.forEach(packed -> {
      Tree tree = packed.tree();
      list.entry(tree.title(), tree.complaint(), tree.steps().stream().map(Step::title).toList(), "#" + tree.id(),
          packed.edition().revision().map(revision -> "Revision " + revision).orElse("Draft"));
    });
    list.close();
    html.open("div", "class", "about").element("h2", "About this file").line();
    TitleBlock.ofIndex(html);
    TitleBlock.checking(html);
    html.close("div").close("section").line();
  }

  private String common() {
    String words = TreeText.common(trees.stream().map(PackedTree::tree).toList(), material,
        medium(Digest.BLANK, new LibraryCircuits()));
    return new Html().open("section", "class", "page common", "id", ":common").raw(words).close("section").line()
        .toString();
  }

  private String all(LibraryCircuits circuits) {
    var html = new Html();
    trees.forEach(packed -> html
        .open("div", "class", "tree", "data-tree", packed.tree().id(), "data-title", packed.tree().title(),
            "data-digest", packed.digest())
        .line().raw(TreeText.of(packed.tree(), packed.facts(), material, packed.edition(),
            medium(packed.digest(), circuits)))
        .close("div").line());
    return html.toString();
  }

  private PageInLibrary medium(String digest, LibraryCircuits circuits) {
    return new PageInLibrary(digest, anchors, titles, material.pictures(), circuits);
  }
}
