package rungbook.pack.page;

import rungbook.pack.drawing.RepeatedDrawings;
import rungbook.pack.style.Assets;
import rungbook.proof.CircuitFacts;
import rungbook.tree.Tree;

/** The whole page of a pack: everything is in it as plain HTML; style and script only narrow the view. */
public final class PackPage {

  private PackPage() {}

  /** The page with the places of its digest still empty. */
  public static String of(Tree tree, CircuitFacts facts, PackInput material, Edition edition) {
    var html = new Html();
    Frame.head(html, tree.title(), Assets.PACK_STYLE, Assets.PACK_SCRIPT, "");
    html.open("body", "data-file", FileNames.inFolder(tree.id())).line();
    TitleBlock.head(html, tree.title(), tree.complaint());
    Frame.bar(html);
    html.open("main").line();
    html.raw(RepeatedDrawings.once(
        TreeText.of(tree, facts, material, edition,
            new PageInFolder(material.pictures(), facts.voltages().isSolvable()))));
    html.close("main").line();
    Frame.foot(html, Assets.PACK_SCRIPT);
    return html.toString();
  }
}
