package rungbook.pack.page;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungbook.pack.circuit.CircuitFold;
import rungbook.pack.circuit.CircuitPictures;
import rungbook.pack.drawing.LeadDrawings;
import rungbook.pack.path.StepPaths;
import rungbook.proof.CircuitFacts;
import rungbook.system.Names;
import rungbook.system.SystemVariants;
import rungbook.tree.Caution;
import rungbook.tree.Qualification;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** All that a pack says of its tree, without the frame of a page: what to read first, then each step. */
public final class TreeText {

  /** What comes before the library's word. */
  public static final String DEFERRAL = "Local codes, the authority that enforces them, the manufacturer's "
      + "instructions and licensed practice come before anything on these pages.";

  private final Tree tree;
  private final PackInput material;
  private final CircuitFacts facts;
  private final Edition edition;
  private final Outline outline;
  private final PackProse prose;
  private final Chapters chapters;
  private final Medium medium;
  private final Html html = new Html();

  private TreeText(Tree tree, CircuitFacts facts, PackInput material, Edition edition, Medium medium) {
    this.tree = tree;
    this.material = material;
    this.facts = facts;
    this.edition = edition;
    this.medium = medium;
    this.outline = Outline.of(tree, medium);
    this.prose = new PackProse(tree, material, outline, medium);
    this.chapters = new Chapters(tree, outline, prose, medium);
  }

  /** As HTML, which depends on no style and no script. */
  public static String of(Tree tree, CircuitFacts facts, PackInput material, Edition edition, Medium medium) {
    return new TreeText(tree, facts, material, edition, medium).write();
  }

  /** @param anchor of the page that the step is on */
  public record Entry(String number, String title, String anchor) {}

  /** A table of contents: the steps in their order on paper. */
  public static List<Entry> contents(Tree tree) {
    Outline outline = Outline.of(tree);
    return outline.order().stream().map(place -> new Entry(place.number(), tree.steps().get(place.step()).title(),
        outline.place(outline.page(place.step())).anchor())).toList();
  }

  /** What trees name in common, in full: what can hurt, and who may do the work. */
  public static String common(List<Tree> trees, PackInput material, Medium medium) {
    var html = new Html();
    Map<Caution, PackProse> cautions = new LinkedHashMap<>();
    Map<Qualification, PackProse> holders = new LinkedHashMap<>();
    for (Tree tree : trees) {
      PackProse prose = new PackProse(tree, material, Outline.of(tree, medium), medium);
      Cautions.all(tree, prose).forEach(caution -> cautions.putIfAbsent(caution, prose));
      WhoMayDoIt.all(tree).forEach(holder -> holders.putIfAbsent(holder, prose));
    }
    html.element("h2", "What can hurt").line();
    cautions.entrySet().stream().sorted(Map.Entry.comparingByKey(Comparator.comparing(Caution::level)))
        .forEach(entry -> Cautions.inFull(html, entry.getKey(), entry.getValue()));
    html.element("h2", "Who may do it").line();
    holders.forEach((holder, prose) -> WhoMayDoIt.inFull(html, holder, prose));
    return html.toString();
  }

  /** The id of the step that a tree begins with. */
  public static String first(Tree tree) {
    return tree.steps().get(Outline.of(tree).order().get(0).step()).id();
  }

  private String write() {
    StepPaths paths = StepPaths.of(tree, facts.voltages(), step -> !outline.isTake(step));
    Cautions cautions = new Cautions(tree, prose, paths.cautions(), medium);
    Optional<CircuitFold> fold = circuit().filter(systems -> facts.voltages().isSolvable()).map(medium::circuit)
        .map(pictures -> new CircuitFold(pictures, pictures.suspects(facts.suspects())));
    MeasureLine measure = new MeasureLine(tree.meter(), paths.dial(),
        new LeadDrawings(circuit().map(SystemVariants::base)), fold);
    StepSection sections = new StepSection(tree, facts.voltages(), paths, outline, prose, measure,
        new WaysOn(tree, outline, medium, fold.map(CircuitFold::possible)), cautions);
    start(cautions, new WhoMayDoIt(tree, prose), fold);
    outline.order().forEach(place -> steps(sections, place));
    fold.filter(any -> medium.isAlone()).ifPresent(one -> html.raw(ladder(one.pictures())));
    TitleBlock.signOff(html);
    return html.toString();
  }

  private Optional<SystemVariants> circuit() {
    return tree.system()
        .flatMap(system -> Optional.ofNullable(material.shared().circuits().get(Names.key(system.id()))));
  }

  /** The section of a whole ladder, and what its pictures and those of steps refer to. */
  public static String ladder(CircuitPictures pictures) {
    return new Html().open("section", "class", "page circuit", "id", pictures.anchor()).raw(pictures.ladder())
        .close("section").line().raw(pictures.definitions()).toString();
  }

  private void start(Cautions cautions, WhoMayDoIt who, Optional<CircuitFold> fold) {
    html.open("section", "class", "page start", "id", medium.anchor(tree.id(), ":start"), "data-l",
        fold.map(one -> one.possible().likelihoods()).orElse(null));
    if (!medium.isAlone()) {
      html.element("h2", tree.title()).element("p", tree.complaint(), "class", "complaint");
    }
    html.element("p", DEFERRAL, "class", "deferral");
    notFor();
    who.inShort(html);
    cautions.atStart(html);
    if (medium.isAlone()) {
      who.inFull(html);
    }
    html.open("div", "class", "words").raw(prose.introduction()).close("div").line();
    chapters.atStart(html);
    contents();
    html.open("div", "class", "about").element("h2", "About this pack").line();
    medium.about(html, tree, edition);
    html.close("div");
    outline.order().stream().findFirst().ifPresent(this::begin);
    html.close("section").line();
  }

  /** In sight from the first screen on; what is to be read is above it. */
  private void begin(Outline.Place first) {
    html.open("div", "class", "dock").open("ul", "class", "ways").open("li")
        .open("a", "class", "way begin", "href", "#" + outline.place(outline.page(first.step())).anchor())
        .open("b").element("u", "Start").close("b").text(" ")
        .open("span").element("i", first.number()).text(" " + tree.steps().get(first.step()).title()).close("span")
        .close("a").close("li").close("ul").close("div").line();
  }

  /** The equipment on which the tree may find the wrong part, said before anything is done. */
  private void notFor() {
    if (!tree.notFor().isEmpty()) {
      html.open("div", "class", "deferral").element("p", "These pages are not for this equipment:").open("ul");
      tree.notFor().forEach(variant -> html.element("li",
          variant.name() + (variant.about().isEmpty() ? "" : ": " + variant.about())));
      html.close("ul").close("div").line();
    }
  }

  /** On a screen the titles; on paper a map, with the ways from each step. */
  private void contents() {
    StepMap map = new StepMap(tree, outline);
    html.open("details", "class", "contents").element("summary", "All steps").open("ul");
    for (Outline.Place place : outline.own()) {
      html.open("li")
          .element("a", place.number() + " " + tree.steps().get(place.step()).title(), "href", "#" + place.anchor());
      html.element("small", map.of(place));
      html.close("li").line();
    }
    chapters.contents(html);
    html.close("ul").close("details").line();
  }

  /** A step, between the plain chapters around it in the text. */
  private void steps(StepSection sections, Outline.Place place) {
    Step step = tree.steps().get(place.step());
    chapters.before(html, step);
    if (!outline.isTake(place.step())) {
      sections.write(html, place);
    }
    chapters.after(html, step);
  }
}
