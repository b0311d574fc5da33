package rungbook.pack.page;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rungbook.pack.circuit.StillPossible;
import rungbook.pack.path.FaultsAhead;
import rungbook.pack.reading.ReadingZones;
import rungbook.rules.flow.Success;
import rungbook.system.Quantity;
import rungbook.tree.Answer;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/** The ways on as large links, each drawn as a rung: the answer is the contact, where it leads is the coil. */
final class WaysOn {

  /** Of the reading, not of the system: a good reading can leave a fault elsewhere as the only answer. */
  private static final String GOOD = "as it should be here";

  private static final String GOOD_YET_FAULTY = GOOD + "; the fault is elsewhere";

  /** In letters. */
  private static final int SHORT_ANSWER = 8;

  private static final int SHORT_TITLE = 30;

  private final Tree tree;
  private final Outline outline;
  private final Medium medium;
  private final Optional<StillPossible> possible;

  WaysOn(Tree tree, Outline outline, Medium medium, Optional<StillPossible> possible) {
    this.tree = tree;
    this.outline = outline;
    this.medium = medium;
    this.possible = possible;
  }

  /** @param zones of a check with a meter */
  void of(Html html, int number, Optional<ReadingZones> zones) {
    Step step = tree.steps().get(number);
    if (step.ways().isEmpty()) {
      return;
    }
    html.open("div", "class", "dock").open("ul", "class", isPair(step) ? "ways pair" : "ways");
    for (int way = 0; way < step.ways().size(); way++) {
      int one = way;
      html.open("li");
      way(html, step, step.ways().get(way), zones.filter(known -> known.isWhollyInside(one)).isPresent(),
          possible.flatMap(suspects -> suspects.code(number, one)));
      html.close("li").line();
    }
    html.close("ul").close("div").line();
  }

  /** Two short answers, such as yes and no, fit beside each other. */
  private boolean isPair(Step step) {
    return step.ways().size() == 2 && step.ways().stream().allMatch(way -> way.target() instanceof Target.ToStep to
        && tree.steps().get(to.step()).title().length() <= SHORT_TITLE
        && answers(step, way).size() == 1 && answers(step, way).get(0).length() <= SHORT_ANSWER);
  }

  /** @param possible with which faults it can be taken, where that is not all of them */
  private void way(Html html, Step step, Way way, boolean good, Optional<String> possible) {
    Optional<String> address = address(way);
    String element = address.isPresent() ? "a" : "span";
    html.open(element, "class", "way" + (good ? " good" : "") + (isWayOut(step, way) ? " out" : ""), "href",
        address.orElse(null), "data-f", possible.orElse(null));
    html.open("b");
    answers(step, way).forEach(answer -> html.element("u", answer).text(" "));
    if (good) {
      html.element("em", FaultsAhead.only(tree, way) ? GOOD_YET_FAULTY : GOOD);
    }
    html.close("b").text(" ").open("span");
    target(html, way);
    html.close("span").close(element);
  }

  /** It says that something could not be done or read: nobody has to confirm anything to leave it. */
  private static boolean isWayOut(Step step, Way way) {
    return step instanceof Step.Check
        ? way.answer() instanceof Answer.NoReading || way.answer() instanceof Answer.AnythingElse
        : !Success.isMeant(way.written(), step.ways().indexOf(way));
  }

  private void target(Html html, Way way) {
    if (way.target() instanceof Target.ToStep to) {
      html.element("i", outline.place(to.step()).number()).text(" ").text(tree.steps().get(to.step()).title());
    } else if (way.target() instanceof Target.ToTree other) {
      html.element("i", "↗").text(" ").text(way.label()).text(" ")
          .element("small", medium.whereabouts(other.tree()));
    }
  }

  private Optional<String> address(Way way) {
    if (way.target() instanceof Target.ToStep to) {
      return Optional.of("#" + outline.place(outline.page(to.step())).anchor());
    }
    if (way.target() instanceof Target.ToTree other) {
      return medium.address(other.tree(), other.step());
    }
    throw new IllegalArgumentException("a way of " + tree.id() + " leads nowhere; only a sound tree becomes a pack");
  }

  /** One line for each thing looked at that matters: contacts in series. */
  static List<String> answers(Step step, Way way) {
    if (step instanceof Step.SenseCheck check && way.answer() instanceof Answer.Words words
        && words.words().size() > 1) {
      return IntStream.range(0, words.words().size())
          .filter(thing -> !words.words().get(thing).equals(Answer.Words.ANY))
          .mapToObj(thing -> check.things().get(thing).text() + ": " + words.words().get(thing)).toList();
    }
    return List.of(step instanceof Step.MeterCheck check ? withUnit(way.written(), check.quantity()) : way.written());
  }

  /** Adds the unit to a range written without one. */
  private static String withUnit(String written, Quantity quantity) {
    boolean bare = Character.isDigit(written.charAt(written.length() - 1));
    boolean moreOrLess = written.endsWith(" or more") || written.endsWith(" or less");
    int or = written.lastIndexOf(" or ");
    if (moreOrLess && Character.isDigit(written.charAt(or - 1))) {
      return written.substring(0, or) + " " + quantity.unit() + written.substring(or);
    }
    return bare ? written + " " + quantity.unit() : written;
  }
}
