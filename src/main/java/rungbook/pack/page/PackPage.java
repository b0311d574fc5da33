package rungbook.pack.page;

import java.util.Optional;
import rungbook.pack.drawing.LeadDrawings;
import rungbook.pack.path.StepPaths;
import rungbook.proof.HighestVoltages;
import rungbook.system.ControlSystem;
import rungbook.system.Names;
import rungbook.system.SystemVariants;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** The whole page of a pack: everything is in it as plain HTML; style and script only narrow the view. */
public final class PackPage {

  private final Tree tree;
  private final PackInput material;
  private final HighestVoltages voltages;
  private final Edition edition;
  private final Outline outline;
  private final PackProse prose;
  private final Chapters chapters;
  private final Html html = new Html();

  private PackPage(Tree tree, HighestVoltages voltages, PackInput material, Edition edition) {
    this.tree = tree;
    this.material = material;
    this.voltages = voltages;
    this.edition = edition;
    this.outline = Outline.of(tree);
    this.prose = new PackProse(tree, material, outline);
    this.chapters = new Chapters(tree, outline, prose);
  }

  /** The page with the places of its digest still empty. */
  public static String of(Tree tree, HighestVoltages voltages, PackInput material, Edition edition) {
    return new PackPage(tree, voltages, material, edition).write();
  }

  private String write() {
    StepPaths paths = StepPaths.of(tree, voltages, step -> !outline.isTake(step));
    StepSection sections = new StepSection(tree, voltages, paths, outline, prose,
        new MeasureLine(tree.meter(), paths.dial(), new LeadDrawings(circuit())));
    Frame.head(html, tree.title(), Assets.PACK_STYLE, Assets.PACK_SCRIPT, "");
    html.open("body", "data-file", FileNames.inFolder(tree.id())).line();
    TitleBlock.head(html, tree.title(), tree.complaint());
    Frame.bar(html);
    html.open("main").line();
    start(new Cautions(tree, prose, paths.cautions()), new WhoMayDoIt(tree, prose));
    outline.order().forEach(place -> steps(sections, place));
    html.close("main").line();
    Frame.foot(html, Assets.PACK_SCRIPT);
    return html.toString();
  }

  private Optional<ControlSystem> circuit() {
    return tree.system()
        .flatMap(system -> Optional.ofNullable(material.shared().circuits().get(Names.key(system.id()))))
        .map(SystemVariants::base);
  }

  private void start(Cautions cautions, WhoMayDoIt who) {
    html.open("section", "class", "page start", "id", ":start");
    html.element("p",
        "Local codes, the authority that enforces them, the manufacturer's instructions and licensed practice "
            + "come before anything on these pages.",
        "class", "deferral");
    notFor();
    who.inShort(html);
    cautions.inFull(html);
    who.inFull(html);
    html.open("div", "class", "words").raw(prose.introduction()).close("div").line();
    chapters.atStart(html);
    contents();
    html.open("div", "class", "about").element("h2", "About this pack").line();
    TitleBlock.of(html, tree, edition);
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

  private void contents() {
    html.open("details", "class", "contents").element("summary", "All " + outline.pages() + " steps").open("ul");
    for (Outline.Place place : outline.order()) {
      html.open("li")
          .element("a", place.number() + " " + tree.steps().get(place.step()).title(), "href", "#" + place.anchor())
          .close("li").line();
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
