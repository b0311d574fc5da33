package rungbook.pack.page;

import java.util.ArrayList;
import java.util.List;
import rungbook.markdown.Document;
import rungbook.markdown.Section;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** Text under a heading that is no step: at the start, or between the steps, where the author wrote it. */
final class Chapters {

  private final Tree tree;
  private final Outline outline;
  private final PackProse prose;
  private final Medium medium;

  Chapters(Tree tree, Outline outline, PackProse prose, Medium medium) {
    this.tree = tree;
    this.outline = outline;
    this.prose = prose;
    this.medium = medium;
  }

  /** @param prefix of the slug, in the ids of the steps of the same file */
  private record Chapter(Document document, String prefix, Section section) {}

  /** A colon keeps it apart from every step's anchor. */
  private String anchor(Chapter chapter) {
    return medium.anchor(tree.id(), ":chapter-" + chapter.prefix() + chapter.section().slug());
  }

  /** Those of the tree before its first step. */
  void atStart(Html html) {
    from(tree.document(), "", 0).forEach(chapter -> write(html, "div", "chapter", chapter));
  }

  /** Those of a fragment before its first step. */
  void before(Html html, Step step) {
    before(step).forEach(chapter -> page(html, chapter));
  }

  void after(Html html, Step step) {
    after(step).forEach(chapter -> page(html, chapter));
  }

  void contents(Html html) {
    List<Chapter> all = new ArrayList<>(from(tree.document(), "", 0));
    outline.order().forEach(place -> {
      Step step = tree.steps().get(place.step());
      all.addAll(before(step));
      all.addAll(after(step));
    });
    all.forEach(chapter -> html.open("li").element("a", chapter.section().title(), "href", "#" + anchor(chapter))
        .close("li").line());
  }

  private List<Chapter> before(Step step) {
    return prose.isFirstOfFragment(step) ? from(step.header().document(), Outline.prefix(step), 0) : List.of();
  }

  private List<Chapter> after(Step step) {
    Document document = step.header().document();
    return from(document, Outline.prefix(step), document.sections().indexOf(step.header().section()) + 1);
  }

  /** The chapters from one section on, up to the next step. An exit is no place to work at: its text is a chapter. */
  private List<Chapter> from(Document document, String prefix, int first) {
    return document.sections().stream().skip(first)
        .takeWhile(section -> !section.isStep() || isExit(section))
        .map(section -> new Chapter(document, prefix, section))
        .filter(chapter -> !isExit(chapter.section()) || !words(chapter).isBlank()).toList();
  }

  static boolean isExit(Section section) {
    return section.blocks().stream().anyMatch(block -> block.kind().equals("exit"));
  }

  private String words(Chapter chapter) {
    return prose.of(chapter.document(), chapter.prefix(), chapter.section());
  }

  private void page(Html html, Chapter chapter) {
    write(html, "section", "page chapter", chapter);
  }

  private void write(Html html, String element, String kind, Chapter chapter) {
    html.open(element, "class", kind, "id", anchor(chapter)).element("h2", chapter.section().title());
    html.open("div", "class", "words").raw(words(chapter)).close("div").close(element).line();
  }
}
