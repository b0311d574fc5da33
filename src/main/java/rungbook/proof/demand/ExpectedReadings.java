package rungbook.proof.demand;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungbook.circuit.network.CircuitState;
import rungbook.proof.plan.ProbePlan;
import rungbook.system.ControlSystem;
import rungbook.system.Terminal;
import rungbook.system.Vocabulary;
import rungbook.tree.Meter;
import rungbook.system.Quantity;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * The AC voltages of a healthy system where its trees measure them: at the start, and with one selector at a time in
 * another position. The power is on and the panels are closed.
 *
 * @param rows in the order in which the trees come to them
 */
public record ExpectedReadings(List<Call> calls, List<Row> rows) {

  private static final String AT_THE_START = "no call";

  private static final Set<Quantity> VOLTS = Set.of(Quantity.AC_VOLTS, Quantity.AC_VOLTS_LOW_IMPEDANCE);

  /** As many installations as the table of what runs draws; the corners of the tolerances are added. */
  private static final int DRAWN = 16;

  /** @param words the setting that differs from the start */
  public record Call(String words, Activity activity) {}

  /** @param shown one for each call */
  public record Row(Terminal red, Terminal black, List<Shown> shown) {

    public Row {
      shown = List.copyOf(shown);
    }
  }

  public ExpectedReadings {
    calls = List.copyOf(calls);
    rows = List.copyOf(rows);
  }

  /**
   * @param system one that was read without problems
   * @param trees of this system, without errors
   */
  public static ExpectedReadings of(ControlSystem system, List<Tree> trees, Meter meter) {
    ReadingSolver solver = ReadingSolver.of(system, Optional.empty(), DRAWN);
    Map<String, CircuitState> calls = calls(system.vocabulary());
    List<Row> rows = pairs(system.vocabulary(), trees).stream()
        .map(pair -> new Row(pair.get(0), pair.get(1), calls.values().stream()
            .map(state -> solver.answer(question(system, pair, meter, state)).shown()).toList()))
        .toList();
    return new ExpectedReadings(calls.entrySet().stream()
        .map(call -> new Call(call.getKey(), solver.activity(call.getValue()))).toList(), rows);
  }

  private static ReadingQuestion question(ControlSystem system, List<Terminal> pair, Meter meter, CircuitState state) {
    return new ReadingQuestion(system, "", pair, Quantity.AC_VOLTS, Optional.empty(), meter, state, List.of(),
        Optional.empty());
  }

  private static Map<String, CircuitState> calls(Vocabulary words) {
    CircuitState start = CircuitState.start(words);
    var calls = new LinkedHashMap<String, CircuitState>();
    calls.put(AT_THE_START, start);
    List<ControlChoice> selectors = ControlChoice.of(words).stream()
        .filter(choice -> choice.kind() == ControlChoice.Kind.SELECTOR).toList();
    for (ControlChoice selector : selectors) {
      // those of the first selector, the thermostat, are calls by themselves; `on` alone says nothing
      boolean isCall = selector.equals(selectors.get(0));
      selector.positions().stream().skip(1).forEach(
          position -> calls.put(isCall ? position : selector.at(position), selector.set(position, start)));
    }
    return calls;
  }

  /** Each pair of points once, whichever lead is on which. */
  private static List<List<Terminal>> pairs(Vocabulary words, List<Tree> trees) {
    var seen = new LinkedHashMap<Set<Terminal>, List<Terminal>>();
    trees.stream().flatMap(tree -> tree.steps().stream()).flatMap(step -> pair(words, step).stream())
        .forEach(pair -> seen.putIfAbsent(Set.copyOf(pair), pair));
    return new ArrayList<>(seen.values());
  }

  private static Optional<List<Terminal>> pair(Vocabulary words, Step step) {
    if (!(step instanceof Step.MeterCheck check) || !VOLTS.contains(check.quantity())) {
      return Optional.empty();
    }
    String place = step.header().at().map(at -> at.key()).orElse("");
    List<Terminal> leads = check.leads().stream().flatMap(lead -> ProbePlan.terminal(words, lead.key(), place).stream())
        .distinct().toList();
    return Optional.of(leads).filter(both -> both.size() == 2);
  }
}
