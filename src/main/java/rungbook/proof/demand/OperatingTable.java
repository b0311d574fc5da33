package rungbook.proof.demand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungbook.circuit.network.CircuitState;
import rungbook.system.ControlSystem;
import rungbook.system.Vocabulary;

/**
 * What a healthy system does in each position of its selectors, with the power on and the panels closed.
 *
 * @param left how many positions are left out, since the table would be too long
 */
public record OperatingTable(List<Row> rows, long left) {

  private static final int MOST_ROWS = 24;

  /** Enough to see what differs between installations; the corners of the tolerances are added. */
  private static final int DRAWN = 16;

  /** @param settings each selector and its position, in words */
  public record Row(List<String> settings, Activity activity) {

    public Row {
      settings = List.copyOf(settings);
    }
  }

  public OperatingTable {
    rows = List.copyOf(rows);
  }

  /** @param system one that was read without problems */
  public static OperatingTable of(ControlSystem system) {
    ReadingSolver solver = ReadingSolver.of(system, Optional.empty(), DRAWN);
    Vocabulary words = system.vocabulary();
    List<ControlChoice> selectors = ControlChoice.of(words).stream()
        .filter(choice -> choice.kind() == ControlChoice.Kind.SELECTOR).toList();
    long all = CircuitState.positionCount(words.controls().values());
    var rows = new ArrayList<Row>();
    for (long number = 0; number < Math.min(all, MOST_ROWS); number++) {
      rows.add(row(number, selectors, words, solver));
    }
    return new OperatingTable(rows, all - rows.size());
  }

  /** The positions count up like the digits of a number, the last selector fastest. */
  private static Row row(long number, List<ControlChoice> selectors, Vocabulary words, ReadingSolver solver) {
    CircuitState state = CircuitState.start(words);
    var settings = new ArrayList<String>();
    long rest = number;
    for (int i = selectors.size() - 1; i >= 0; i--) {
      ControlChoice selector = selectors.get(i);
      String position = selector.positions().get((int) (rest % selector.positions().size()));
      rest /= selector.positions().size();
      state = selector.set(position, state);
      settings.add(0, selector.at(position));
    }
    return new Row(settings, solver.activity(state));
  }
}
