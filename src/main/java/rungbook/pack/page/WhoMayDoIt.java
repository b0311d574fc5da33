package rungbook.pack.page;

import java.util.LinkedHashSet;
import java.util.Set;
import rungbook.tree.Qualification;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** What the person at work must hold: in a line at each step, and for the whole tree at the start. */
final class WhoMayDoIt {

  private final Tree tree;
  private final PackProse prose;

  WhoMayDoIt(Tree tree, PackProse prose) {
    this.tree = tree;
    this.prose = prose;
  }

  void atStep(Html html, Step step) {
    if (!step.header().who().isEmpty()) {
      html.open("p", "class", "who").text("For: ");
      String between = "";
      for (Qualification holder : step.header().who()) {
        html.text(between);
        line(html, holder);
        between = "; ";
      }
      html.close("p").line();
    }
  }

  /** The list for the whole tree. */
  void inShort(Html html) {
    if (!all(tree).isEmpty()) {
      html.element("h2", "Who may do it").line();
      html.element("p", "Each step says whom it is for. The whole procedure takes:").open("ul", "class", "holders");
      all(tree).forEach(holder -> {
        html.open("li");
        line(html, holder);
        html.close("li").line();
      });
      html.close("ul").line();
    }
  }

  /** What each of them means, and what an apprentice may do. */
  void inFull(Html html) {
    all(tree).forEach(holder -> inFull(html, holder, prose));
  }

  static void inFull(Html html, Qualification holder, PackProse prose) {
    html.open("div", "class", "holder", "id", anchor(holder)).element("h3", holder.line())
        .raw(prose.whole(holder.document())).close("div").line();
  }

  static Set<Qualification> all(Tree tree) {
    Set<Qualification> all = new LinkedHashSet<>();
    tree.steps().forEach(step -> all.addAll(step.header().who()));
    return all;
  }

  private static void line(Html html, Qualification holder) {
    html.element("a", holder.title(), "href", "#" + anchor(holder));
    if (!holder.rule().isEmpty()) {
      html.element("span", " — " + holder.rule(), "class", "rule");
    }
  }

  /** A colon keeps it apart from every step's anchor and from the page's own. */
  private static String anchor(Qualification holder) {
    return ":who-" + holder.id().replace(' ', '-');
  }
}
