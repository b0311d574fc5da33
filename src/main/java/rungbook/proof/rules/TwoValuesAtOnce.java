package rungbook.proof.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungbook.circuit.ValueClashes.Clash;
import rungbook.circuit.ValueClashes;
import rungbook.circuit.network.CircuitState;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.proof.plan.StateText;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.system.ControlSystem;
import rungbook.system.Names;
import rungbook.system.SystemVariants;

/**
 * A sight whose text says that it shows two values at once, or a quantity with two ranges at once: in one state, the
 * conditions of both hold.
 */
public final class TwoValuesAtOnce {

  static final Code TWO_VALUES_AT_ONCE = Code.of("two-values-at-once");

  private TwoValuesAtOnce() {}

  /** @param document the system's text; a problem is reported at the line of the sight or quantity */
  public static List<Problem> inspect(SystemVariants systems, Document document) {
    return ValueClashes.of(systems.base()).stream()
        .flatMap(clash -> line(clash, document).map(entry -> problem(clash, entry, systems.base(), document)).stream())
        .toList();
  }

  private static Optional<Entry> line(Clash clash, Document document) {
    return Stream.of("sights", "quantities").flatMap(document::entries)
        .filter(entry -> Names.key(entry.key()).equals(clash.key())).findFirst();
  }

  private static Problem problem(Clash clash, Entry entry, ControlSystem system, Document document) {
    String state = StateText.of(clash.state(), CircuitState.start(system.vocabulary()));
    String fault = system.vocabulary().faults().getOrDefault(clash.caseKey(), "");
    return Problem.at(TWO_VALUES_AT_ONCE, document.source(), entry.keySpan()).with("sight", entry.key())
        .with("first", clash.first()).with("second", clash.second())
        .with("state", state + (fault.isEmpty() ? "; no fault" : "; " + fault));
  }
}
