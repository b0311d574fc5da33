package rungbook.report;

import java.util.List;
import java.util.Optional;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Quiet;
import rungbook.source.Silenced;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.source.Witness;

/** Problems to print. */
public final class Sample {

  public static final Source TREE = new Source("trees/no cooling.md",
      "## Call\n\n- done: [Y](#y)\n\n## Y at the board\n\n- under 5: [Coil](#mesure-coil)\n");

  private Sample() {}

  public static Problem unknownStep() {
    return at("unknown-step", TREE, "mesure-coil").with("target", "mesure-coil").near("mesure-coil",
        Optional.of("measure-coil"));
  }

  public static Problem gapShownBy(Witness witness) {
    return at("reading-gap", TREE, "under 5").with("readings", "5.0 to 23.9 V").shownBy(witness);
  }

  public static Silenced silenced() {
    return new Silenced(at("html-shown-as-text", TREE, "Y at the board"), new Quiet(Code.of("html-shown-as-text"), TREE,
        span(TREE, "done"), "the label, it reads so", List.of(), Optional.empty()));
  }

  public static Witness path() {
    return new Witness.Path(List.of(new Witness.Stop("Call", TREE, span(TREE, "Call"), "done"),
        new Witness.Stop("Y at the board", TREE, span(TREE, "Y at"), "")));
  }

  public static Problem at(String code, Source source, String marked) {
    return Problem.at(Code.of(code), source, span(source, marked));
  }

  public static Span span(Source source, String text) {
    int start = source.text().indexOf(text);
    return new Span(start, start + text.length());
  }
}
