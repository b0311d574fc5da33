package rungbook.pack.page;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungbook.pack.path.NewCautions;
import rungbook.tree.Caution;
import rungbook.tree.NameRef;
import rungbook.tree.SignalWord;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * Cautions: in full at the start, and at each step by level and title; where nobody may have read it before, with the
 * hazard and how to avoid it. One that was read before is folded, with the same words behind its bar; in the file of
 * many trees it leads to them, since they would fill most of the file, and the script opens it in place.
 */
final class Cautions {

  private static final String USUAL = "before-you-start";
  private static final Comparator<Caution> WORST_FIRST = Comparator.comparing(Caution::level);

  private final Tree tree;
  private final PackProse prose;
  private final NewCautions fresh;
  private final Medium medium;

  Cautions(Tree tree, PackProse prose, NewCautions fresh, Medium medium) {
    this.tree = tree;
    this.prose = prose;
    this.fresh = fresh;
    this.medium = medium;
  }

  void atStart(Html html) {
    html.element("h2", "What can hurt").line();
    List<Caution> all = all(tree, prose);
    if (medium.isAlone()) {
      all.forEach(caution -> inFull(html, caution, prose));
    } else {
      html.open("div", "class", "cautions").line();
      all.forEach(caution -> bar(html, caution));
      html.close("div").line();
    }
  }

  /** The usual cautions first, then those that the tree's steps name, the worst first. */
  static List<Caution> all(Tree tree, PackProse prose) {
    var named = new LinkedHashSet<Caution>();
    tree.steps().forEach(step -> named.addAll(at(step, prose)));
    return Stream.concat(prose.caution(USUAL).stream(),
        named.stream().filter(caution -> !caution.id().equals(USUAL)).sorted(WORST_FIRST)).toList();
  }

  static void inFull(Html html, Caution caution, PackProse prose) {
    html.open("div", "class", "caution " + style(caution.level()), "id", anchor(caution)).open("h3");
    head(html, caution);
    html.close("h3");
    line(html, "hazard", caution.hazard());
    line(html, "avoid", caution.avoid());
    html.raw(prose.whole(caution.document())).close("div").line();
  }

  /**
   * Folded to a bar, or open where nobody may have read it before and where leads touch the danger.
   *
   * @param steps the step, after those that only lead to it
   * @param isLive whether leads touch line voltage there
   */
  void atStep(Html html, List<Integer> steps, boolean isLive) {
    List<Caution> named = steps.stream().map(tree.steps()::get).flatMap(step -> at(step, prose).stream()).distinct()
        .sorted(WORST_FIRST).toList();
    if (named.isEmpty()) {
      return;
    }
    html.open("div", "class", "cautions").line();
    for (Caution caution : named) {
      boolean open = (isLive && caution.level() == SignalWord.DANGER)
          || steps.stream().anyMatch(step -> isNew(step, caution));
      switch (open ? Medium.Repeated.OPEN : medium.repeated()) {
        case OPEN -> box(html, caution, true);
        case FOLDED -> box(html, caution, false);
        default -> bar(html, caution);
      }
    }
    html.close("div").line();
  }

  /** A line that leads to the caution in full. */
  private static void bar(Html html, Caution caution) {
    html.open("a", "class", "caution " + style(caution.level()), "href", "#" + anchor(caution));
    html.element("b", caution.level().name()).text(" " + caution.title()).close("a").line();
  }

  private static void box(Html html, Caution caution, boolean open) {
    html.open("details", "class", "caution " + style(caution.level()), "open", open ? "" : null).open("summary");
    head(html, caution);
    html.close("summary");
    line(html, "hazard", caution.hazard());
    line(html, "avoid", caution.avoid());
    html.open("p").element("a", "More", "href", "#" + anchor(caution)).text(" on this.").close("p").close("details")
        .line();
  }

  private boolean isNew(int step, Caution caution) {
    return tree.steps().get(step).header().cautions().stream()
        .anyMatch(name -> prose.caution(name.text()).filter(caution::equals).isPresent()
            && fresh.isNew(step, name.key()));
  }

  private static void line(Html html, String kind, String words) {
    if (!words.isEmpty()) {
      html.element("p", words, "class", kind).text(" ");
    }
  }

  /**
   * The class that the style knows a level by; {@code caution} is the box around any of them. Its shape tells it apart
   * without color: octagon, triangle, diamond, square, after road signs (this project's own choice).
   */
  private static String style(SignalWord level) {
    return level == SignalWord.CAUTION ? "care" : level.word();
  }

  private static void head(Html html, Caution caution) {
    html.element("b", caution.level().name()).text(" ").element("span", caution.title());
  }

  private static List<Caution> at(Step step, PackProse prose) {
    return step.header().cautions().stream().map(NameRef::text).map(prose::caution).flatMap(Optional::stream)
        .distinct()
        .sorted(WORST_FIRST).toList();
  }

  /** Two colons keep it apart from every step's anchor and from the page's own. */
  private static String anchor(Caution caution) {
    return "::" + caution.id().replace(' ', '-');
  }
}
