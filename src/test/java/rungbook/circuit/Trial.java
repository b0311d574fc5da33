package rungbook.circuit;

import java.util.List;
import java.util.stream.Stream;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.Samples;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.Fault;
import rungbook.system.reader.BaseSystem;
import rungbook.system.reader.SystemReader;

/**
 * A small circuit on a bench, built from the text of its parts, for tests of one constant at a time. Every point is at
 * the bench; a cable's far end is in the shed.
 */
final class Trial {

  private static final String TEXT = """
      ---
      title: Trial
      ---

      ```locations
      bench: start, panel lid
      shed: walk 1 min
      ```

      ```points
      %s```

      ```controls
      hand switch: isolates power, at bench
      interlock: interlock, at bench
      %s```

      ```parts
      %s```

      ```sights
      %s```

      ```faults
      %s```
      """;

  private final Dictionary dictionary;
  private final CircuitState state;

  private Trial(Dictionary dictionary, CircuitState state) {
    this.dictionary = dictionary;
    this.state = state;
  }

  /** A circuit without faults and sights at the middle of every spread. */
  static Trial of(String points, String... parts) {
    return of(Draw.MIDDLE, points, "", "", parts);
  }

  /**
   * @param points names separated by spaces; a part is its own point.
   * @param sights and faults lines of their blocks; several faults are also one case together
   */
  static Trial of(Draw draw, String points, String sights, String faults, String... parts) {
    return controlled(draw, points, "", sights, faults, parts);
  }

  /** @param controls lines of their block, beside those that every trial has */
  static Trial controlled(Draw draw, String points, String controls, String sights, String faults, String... parts) {
    SystemReader.Read read = read(points, controls, sights, faults, parts);
    if (!read.problems().isEmpty()) {
      throw new IllegalStateException(Systems.text(read.problems().get(0)));
    }
    List<Fault> all = read.system().faults();
    List<List<Fault>> cases = Stream.concat(all.stream().map(List::of),
        all.size() > 1 ? Stream.of(all) : Stream.empty()).toList();
    return new Trial(Dictionary.of(read.system(), new Samples(List.of(draw)), cases), null);
  }

  static SystemReader.Read read(String points, String sights, String faults, String... parts) {
    return read(points, "", sights, faults, parts);
  }

  private static SystemReader.Read read(String points, String controls, String sights, String faults,
      String... parts) {
    var lines = new StringBuilder();
    for (String point : (points + " ground spare1 spare2 spare3 spare4").split(" ")) {
      lines.append(point.replace("spare", "spare ")).append(point.endsWith("*") ? "" : ": at bench\n");
    }
    String at = lines.toString().replace("*", ": at bench, shed\n");
    String text = TEXT.formatted(at, controls, withControls(parts), sights + "\n", faults + "\n");
    return BaseSystem.read("trial", DocumentReader.read(new Source("shared/systems/trial.md", text)));
  }

  /** A control that no part is called after gets a contact that leads nowhere. */
  private static String withControls(String... parts) {
    String all = String.join("\n", parts) + "\n";
    String hand = all.contains("hand switch: ") ? "" : "hand switch: switch, spare 1 to spare 2\n";
    String interlock = all.contains("interlock: ") ? "" : "interlock: interlock, spare 3 to spare 4\n";
    return hand + interlock + all;
  }

  Trial in(CircuitState other) {
    return new Trial(dictionary, other);
  }

  CircuitState start() {
    return CircuitState.start(dictionary.network().system().vocabulary());
  }

  private CircuitState state() {
    return state == null ? start() : state;
  }

  double volts(String red, String black) {
    return read("healthy", MeterFunction.VOLTS, red, black);
  }

  double ohms(String red, String black) {
    return read("healthy", MeterFunction.OHMS, red, black);
  }

  double amps(String point) {
    return read("healthy", MeterFunction.AMPS, point, point);
  }

  /** As coded in {@link Reading}. */
  double read(String fault, MeterFunction meter, String red, String black) {
    ReadingTable table = Whole.table(dictionary, state(), List.of(Leads.at("bench", meter, red, black)));
    return table.reading(dictionary.cases().indexOf(fault), 0, 0);
  }

  boolean seen(String sight) {
    return seenWith("healthy", sight);
  }

  boolean seenWith(String fault, String sight) {
    ReadingTable table = Whole.table(dictionary, state(), List.of());
    return table.seen(dictionary.cases().indexOf(fault), 0, table.sights().indexOf(sight));
  }
}
