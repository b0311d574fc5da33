package rungbook.pack.page;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rungbook.pack.drawing.LeadDrawings;
import rungbook.pack.reading.ReadingZones;
import rungbook.pack.reading.VoltageBound;
import rungbook.proof.HighestVoltages;
import rungbook.source.Source;
import rungbook.tree.Action;
import rungbook.tree.NameRef;
import rungbook.tree.Setting;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** A step as a section of the page: whom it is for, what can hurt, what to do, where the leads go, and the ways on. */
final class StepSection {

  private final Tree tree;
  private final HighestVoltages voltages;
  private final PackProse prose;
  private final Cautions cautions;
  private final WhoMayDoIt who;
  private final LeadDrawings drawings;
  private final ActionSentences actionSentences;
  private final WaysOn ways;

  StepSection(Tree tree, HighestVoltages voltages, Outline outline, PackProse prose, Cautions cautions,
      WhoMayDoIt who, LeadDrawings drawings) {
    this.tree = tree;
    this.voltages = voltages;
    this.prose = prose;
    this.cautions = cautions;
    this.who = who;
    this.drawings = drawings;
    this.actionSentences = new ActionSentences(tree.system());
    this.ways = new WaysOn(tree, outline);
  }

  void write(Html html, Outline.Place place) {
    Step step = tree.steps().get(place.step());
    Optional<ReadingZones> zones = zones(place.step());
    html.open("section", "class", "page step " + kind(step), "id", place.anchor(), "data-r",
        zones.map(Routing::of).orElse(null), "data-u", unit(step));
    html.open("h2").element("span", place.number(), "class", "n").text(" ").element("span", step.title()).close("h2")
        .line();
    where(html, step);
    who.atStep(html, step);
    cautions.atStep(html, step);
    if (step instanceof Step.MeterCheck check) {
      meterCheck(html, check);
    } else if (step instanceof Step.SenseCheck check) {
      senseCheck(html, check);
    } else if (step instanceof Step.Finding finding) {
      finding(html, finding);
    } else if (step instanceof Step.End end) {
      end(html, end);
    } else {
      task(html, step);
    }
    ways.of(html, step, zones);
    html.close("section").line();
  }

  private static String kind(Step step) {
    if (step instanceof Step.Check) {
      return "check";
    }
    return step instanceof Step.Finding ? "finding" : step instanceof Step.End ? "end" : "task";
  }

  private void where(Html html, Step step) {
    String kind = kind(step);
    html.open("p", "class", "where").text(kind.substring(0, 1).toUpperCase(Locale.ROOT) + kind.substring(1));
    step.at().ifPresent(at -> html.text(" at ").element("b", at.text()));
    if (step.minutes().signum() > 0) {
      String minutes = step.minutes().stripTrailingZeros().toPlainString();
      html.text(", about " + minutes + (minutes.equals("1") ? " minute" : " minutes"));
    }
    html.close("p").line();
  }

  private void meterCheck(Html html, Step.MeterCheck check) {
    presumed(html, check.presumed());
    html.open("p", "class", "measure").text("Measure ").element("b", check.quantity().words());
    String leads = WaysOn.leads(check.leads());
    if (!leads.isEmpty()) {
      html.text(": ").text(leads);
    }
    html.text(".");
    if (check.expected().isPresent()) {
      html.text(" Expected: ").element("b", written(check), "class", "window").text(".");
    }
    html.close("p").line();
    if (!leads.isEmpty()) {
      html.raw(drawings.of(check, "Drawing: " + leads)).line();
    }
    prose(html, check);
    html.open("p", "class", "blank").text("Reading: ").close("p");
  }

  /** The expected window as the author wrote it. */
  private static String written(Step.MeterCheck check) {
    Source source = check.source();
    return source.text(check.expectedSpan());
  }

  private void senseCheck(Html html, Step.SenseCheck check) {
    presumed(html, check.presumed());
    String things = check.things().stream().map(NameRef::text).collect(Collectors.joining("; "));
    html.open("p", "class", "measure").text(ask(check.sense())).element("b", things).close("p").line();
    prose(html, check);
  }

  private static String ask(Step.Sense sense) {
    return switch (sense) {
      case LOOK -> "Look: ";
      case LISTEN -> "Listen: ";
      case SMELL -> "Smell: ";
      case FEEL -> "Feel: ";
      case ASK -> "Ask: ";
    };
  }

  private static void presumed(Html html, List<Setting> presumed) {
    if (!presumed.isEmpty()) {
      html.element("p", "With " + presumed.stream().map(setting -> setting.control() + " at " + setting.position())
          .collect(Collectors.joining(", ")) + ".", "class", "presumed");
    }
  }

  private void finding(Html html, Step.Finding finding) {
    html.open("div", "class", "concluded");
    if (finding.evacuate()) {
      html.open("p", "class", "evacuate danger").text("Get everybody out of the building now.").close("p");
    }
    conclusion(html, "Healthy", finding.healthy() ? "no fault in this system" : "");
    conclusion(html, finding.faults().size() > 1 ? "Fault, one of" : "Fault",
        finding.faults().stream().map(NameRef::text).collect(Collectors.joining("; ")));
    conclusion(html, "Stop here and call", finding.refer().map(NameRef::text).orElse(""));
    guarded(html, finding);
    html.close("div").line();
    prose(html, finding);
    if (!finding.repair().isEmpty()) {
      html.element("p", "Repair and close up, in this order:", "class", "order");
    }
    actions(html, finding.repair());
  }

  private void end(Html html, Step.End end) {
    html.open("div", "class", "concluded");
    conclusion(html, "Result", end.result().words());
    conclusion(html, end.result() == Step.Result.REFERRED ? "Call" : "Tell",
        end.refer().map(NameRef::text).orElse(""));
    guarded(html, end);
    html.close("div").line();
    prose(html, end);
  }

  private static void guarded(Html html, Step step) {
    conclusion(html, "Left open; somebody stays and guards it",
        step.guarded().stream().map(NameRef::text).collect(Collectors.joining("; ")));
  }

  private static void conclusion(Html html, String what, String words) {
    if (!words.isEmpty()) {
      html.open("p").text(what + ": ").element("b", words).close("p");
    }
  }

  /** The prose first: it has the hazards and the work between two actions. The actions are the list to go over. */
  private void task(Html html, Step step) {
    prose(html, step);
    if (!prose.of(step).isBlank() && !actionSentences.of(step.actions()).isEmpty()) {
      html.element("p", "Before you go on, all of this is done:", "class", "order");
    }
    actions(html, step.actions());
  }

  private void actions(Html html, List<Action> actions) {
    List<ActionSentences.Sentence> sentences = actionSentences.of(actions);
    if (!sentences.isEmpty()) {
      html.open("ol", "class", "actions");
      sentences.forEach(sentence -> sentence(html, sentence));
      html.close("ol");
    }
  }

  private static void sentence(Html html, ActionSentences.Sentence sentence) {
    html.open("li").text(sentence.words());
    if (!sentence.pairs().isEmpty()) {
      html.open("ul", "class", "pairs");
      sentence.pairs().forEach(pair -> html.element("li", pair).text(" "));
      html.close("ul");
    }
    html.close("li").line();
  }

  private void prose(Html html, Step step) {
    String words = prose.of(step);
    if (!words.isBlank()) {
      html.open("div", "class", "words").raw(words).close("div").line();
    }
  }

  /** Of a check with a meter that has such a scale. */
  private Optional<ReadingZones> zones(int step) {
    return tree.steps().get(step) instanceof Step.MeterCheck check
        ? tree.meter().scale(check.quantity()).map(scale -> new ReadingZones(check, scale,
            VoltageBound.of(check, scale, voltages.at(step), tree.system())))
        : Optional.empty();
  }

  private static @Nullable String unit(Step step) {
    return step instanceof Step.MeterCheck check ? check.quantity().unit() : null;
  }
}
