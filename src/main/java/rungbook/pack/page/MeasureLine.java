package rungbook.pack.page;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rungbook.pack.circuit.CircuitFold;
import rungbook.pack.drawing.DialDrawing;
import rungbook.pack.drawing.LeadDrawings;
import rungbook.pack.path.DialSettings;
import rungbook.pack.path.DialTurn;
import rungbook.source.Source;
import rungbook.tree.Meter;
import rungbook.tree.NameRef;
import rungbook.tree.Step;

/** What to do at a check, in large letters: where the dial and the leads go, and what to expect. */
final class MeasureLine {

  private final Meter meter;
  private final DialSettings dial;
  private final LeadDrawings drawings;
  private final Optional<CircuitFold> circuit;

  /** @param circuit empty where nothing is known of one */
  MeasureLine(Meter meter, DialSettings dial, LeadDrawings drawings, Optional<CircuitFold> circuit) {
    this.meter = meter;
    this.dial = dial;
    this.drawings = drawings;
    this.circuit = circuit;
  }

  void of(Html html, int step, Step.MeterCheck check) {
    html.open("div", "class", "measure meter").open("div", "class", "set")
        .raw(DialDrawing.of(meter, check.quantity()));
    DialTurn turn = dial.at(step);
    if (turn != DialTurn.NONE) {
      html.element("em", turn.words(), "class", "turn");
    }
    html.close("div").open("div").open("p").text("Measure ").element("b", check.measured()).close("p").line();
    if (!check.leads().isEmpty()) {
      html.open("p");
      leads(html, check.leads());
      html.close("p").line();
    }
    if (check.expected().isPresent()) {
      html.open("p").text("Expected: ").element("b", written(check), "class", "window").close("p");
    }
    html.close("div").close("div").line();
    if (!check.leads().isEmpty()) {
      html.raw(drawings.of(check, "Drawing: " + words(check.leads()))).line();
    }
  }

  /** The rung that the leads are on, and what can still be the cause. */
  void circuit(Html html, int step, Step.MeterCheck check) {
    circuit.ifPresent(fold -> html.raw(fold.of(step, drawings.leads(check))));
  }

  /** The expected window as the author wrote it. */
  private static String written(Step.MeterCheck check) {
    Source source = check.source();
    return source.text(check.expectedSpan());
  }

  private static void leads(Html html, List<NameRef> leads) {
    if (leads.size() == 1) {
      html.text("The jaw around ").element("b", leads.get(0).text()).text(" alone");
    } else {
      html.element("span", "Red", "class", "lead red").text(" on ").element("b", leads.get(0).text()).text(", ")
          .element("span", "black", "class", "lead").text(" on ").element("b", leads.get(1).text());
    }
  }

  private static String words(List<NameRef> leads) {
    return leads.size() == 1 ? "the jaw around " + leads.get(0).text() + " alone"
        : "red lead on " + leads.get(0).text() + ", black lead on " + leads.get(1).text();
  }

  static void of(Html html, Step.SenseCheck check) {
    String things = check.things().stream().map(NameRef::text).collect(Collectors.joining("; "));
    html.open("div", "class", "measure").open("p").text(ask(check.sense())).element("b", things).close("p").close("div")
        .line();
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
}
