package rungbook.pack.page;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rungbook.pack.path.DialSettings;
import rungbook.pack.path.StepPaths;
import rungbook.pack.path.StepState;
import rungbook.pack.reading.ReadingZones;
import rungbook.pack.reading.VoltageBound;
import rungbook.proof.HighestVoltages;
import rungbook.system.Quantity;
import rungbook.tree.Setting;
import rungbook.tree.Step;
import rungbook.tree.StepTimer;
import rungbook.tree.Tree;

/** A step as a section of the page: whom it is for, what can hurt, what to do, where the leads go, and the ways on. */
final class StepSection {

  private final Tree tree;
  private final HighestVoltages voltages;
  private final StepPaths paths;
  private final Outline outline;
  private final PackProse prose;
  private final Cautions cautions;
  private final WhoMayDoIt who;
  private final MeasureLine measure;
  private final TaskText task;
  private final WaysOn ways;

  StepSection(Tree tree, HighestVoltages voltages, StepPaths paths, Outline outline, PackProse prose,
      MeasureLine measure, WaysOn ways, Cautions cautions) {
    this.tree = tree;
    this.voltages = voltages;
    this.paths = paths;
    this.outline = outline;
    this.prose = prose;
    this.cautions = cautions;
    this.who = new WhoMayDoIt(tree, prose);
    this.measure = measure;
    this.task = new TaskText(prose, new ActionSentences(tree.system()), paths.states());
    this.ways = ways;
  }

  void write(Html html, Outline.Place place) {
    int number = place.step();
    Step step = tree.steps().get(number);
    boolean live = paths.leads().at(number);
    Optional<ReadingZones> zones = zones(number);
    html.open("section", "class", "page step " + kind(step) + (live ? " live-line" : ""), "id", place.anchor(),
        "data-r", zones.map(Routing::of).orElse(null), "data-u", unit(step), "data-q",
        DialSettings.setBy(step).map(Quantity::words).orElse(null), "data-left", left(number), "data-s", lasting(step),
        "data-id", place.anchor().equals(step.id()) ? null : step.id());
    taken(html, number);
    if (live) {
      strip(html, number);
    }
    html.open("h2").element("span", place.number(), "class", "n").text(" ").element("span", step.title()).close("h2")
        .line();
    where(html, number, step);
    List<Integer> led = Stream.concat(outline.takes(number).stream(), Stream.of(number)).toList();
    led.forEach(one -> who.atStep(html, tree.steps().get(one)));
    cautions.atStep(html, led, live);
    opening(html, number, step);
    content(html, number, step);
    timer(html, step);
    ways.of(html, number, zones);
    html.close("section").line();
  }

  private void content(Html html, int number, Step step) {
    if (step instanceof Step.MeterCheck check) {
      presumed(html, number, check.presumed());
      measure.of(html, number, check);
      words(html, "words", prose.of(step));
      measure.circuit(html, number, check);
      html.open("p", "class", "blank").text("Reading: ").close("p");
    } else if (step instanceof Step.SenseCheck check) {
      presumed(html, number, check.presumed());
      MeasureLine.of(html, check);
      words(html, "words", prose.of(step));
    } else if (step instanceof Step.Finding finding) {
      Conclusion.of(html, finding);
      task.of(html, finding);
    } else if (step instanceof Step.End end) {
      Conclusion.of(html, end);
      words(html, "words", prose.of(step));
    } else {
      task.of(html, step);
    }
  }

  /** After what to do: a task's wait begins then. */
  private static void timer(Html html, Step step) {
    step.timer().ifPresent(timer -> {
      html.open("p", "class", "timer", "data-k", timer.kind().key(), "data-s", "" + timer.seconds(), "data-w",
          timer.written());
      if (timer.kind() == StepTimer.Kind.WAIT) {
        html.text("Wait: ").element("b", timer.written());
      } else {
        html.text("It is there for only ").element("b", timer.written()).text(". Be ready before it begins.");
      }
      html.close("p").line();
    });
  }

  private static String kind(Step step) {
    if (step instanceof Step.Check) {
      return "check";
    }
    return step instanceof Step.Finding ? "finding" : step instanceof Step.End ? "end" : "task";
  }

  /** The steps that took in the fragment which begins here: no pages of their own, and no words lost. */
  private void taken(Html html, int number) {
    for (int take : outline.takes(number)) {
      Outline.Place place = outline.place(take);
      html.open("p", "class", "taken", "id", place.anchor()).element("span", place.number()).text(" ")
          .text(tree.steps().get(take).title()).close("p").line();
    }
  }

  private void strip(Html html, int number) {
    String volts = paths.leads().volts(number).isPresent()
        ? ": up to\u00a0" + paths.leads().volts(number).getAsLong() + "\u00a0V" : ": line voltage";
    html.open("p", "class", "strip")
        .raw("<svg viewBox=\"0 0 24 24\" aria-hidden=\"true\"><path d=\"M14 1L4 14h6l-2 9L19 "
            + "9h-7z\"/></svg>")
        .element("b", "Live" + volts).close("p").line();
  }

  /** The place, the time, and the state of the equipment. */
  private void where(Html html, int number, Step step) {
    html.open("p", "class", "where");
    String between = "";
    if (step.at().isPresent()) {
      html.element("b", step.at().get().text());
      between = " · ";
    }
    if (step.minutes().signum() > 0) {
      html.text(between + step.minutes().stripTrailingZeros().toPlainString() + " min");
      between = " · ";
    }
    StepState state = paths.states().at(number);
    for (String certain : state.certain()) {
      html.text(between).element("i", certain);
      between = " · ";
    }
    for (String possible : state.possible()) {
      html.text(between).element("i", "perhaps " + possible);
      between = " · ";
    }
    html.close("p").line();
  }

  /** What a check takes for granted and the state above does not say. */
  private void presumed(Html html, int number, List<Setting> presumed) {
    List<String> known = paths.states().at(number).certain();
    List<String> left = presumed.stream().map(setting -> paths.states().set(setting))
        .flatMap(Optional::stream).filter(setting -> !known.contains(setting)).toList();
    if (!left.isEmpty()) {
      html.element("p", "With " + String.join(", ", left) + ".", "class", "presumed").line();
    }
  }

  private void opening(Html html, int number, Step step) {
    outline.takes(number).forEach(take -> {
      Step taking = tree.steps().get(take);
      words(html, "words", prose.opening(taking) + prose.of(taking));
    });
    words(html, "words", prose.opening(step));
  }

  private static void words(Html html, String kind, String words) {
    if (!words.isBlank()) {
      html.open("div", "class", kind).raw(words).close("div").line();
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

  /** For the field record: what is still open after this step. */
  private @Nullable String lasting(Step step) {
    List<String> changes = paths.states().lasting(step);
    return changes.isEmpty() ? null : String.join("\n", changes);
  }

  private @Nullable String left(int step) {
    return tree.steps().get(step).isLast() ? null : paths.ahead().words(step);
  }
}
