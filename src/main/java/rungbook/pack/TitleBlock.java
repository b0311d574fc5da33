package rungbook.pack;

import rungbook.tree.Tree;

/** Who a drawing is, in the corner of every sheet: title, system, meter, edition, digest. */
final class TitleBlock {

  private TitleBlock() {}

  static void of(Html html, Tree tree, Edition edition) {
    html.open("header").open("p", "class", "mark").raw(Frame.LADDER).text("Rungbook").close("p");
    html.element("h1", tree.title()).element("p", tree.complaint(), "class", "complaint");
    html.open("dl");
    tree.system().ifPresent(system -> cell(html, "System", system.title()));
    cell(html, "Meter", tree.meter().title());
    cell(html, "Revision", edition.revision().orElse("draft"));
    cell(html, "Released", edition.released().map(Object::toString).orElse("not released"));
    edition.renewAfter().ifPresent(day -> cell(html, "Look for a newer one after", day.toString()));
    html.open("div").element("dt", "Digest").open("dd").raw(Digest.shortPlace()).close("dd").close("div");
    html.close("dl").close("header").line();
  }

  private static void cell(Html html, String name, String words) {
    html.open("div").element("dt", name).element("dd", words).close("div").line();
  }
}
