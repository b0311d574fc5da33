package rungbook.action;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.Names;
import rungbook.system.Vocabulary;
import rungbook.system.Vocabulary.Control;
import rungbook.system.Vocabulary.Location;
import rungbook.system.Vocabulary.Part;
import rungbook.system.Vocabulary.Point;
import rungbook.system.Vocabulary.Role;
import rungbook.tree.Shared;
import rungbook.tree.reader.TreeReader;

/**
 * Every action on every kind of thing, done at the furnace: whether the thing will do, and what changes. The table is
 * written from docs/tree-text.md, not from the code: {@code +} begins, {@code -} ends, {@code *} is the thing, and
 * {@code others} are the things that no other line of the action names.
 */
class ActionTableTest {

  private static final String TABLE = """
      set          | thermostat off | yes | thermostat = off
      set          | others         | no  |

      open         | blower door    | yes | +open *
      open         | others         | no  | +open *

      close        | blower door    | yes | -open *
      close        | others         | no  | -open *

      bypass       | door switch    | yes | +bypassed *
      bypass       | others         | no  | +bypassed *

      isolate      | furnace switch | yes | +isolated *
      isolate      | others         | no  | +isolated *

      try          | furnace switch | yes | +tried *
      try          | others         | no  | +tried *

      tag out      | furnace switch | yes | +isolated *, +tagged out *
      tag out      | others         | no  | +isolated *, +tagged out *

      prove dead   | Y, coil Y      | yes | +proved dead furnace
      prove dead   | others         | no  | +proved dead furnace

      discharge    | run capacitor  | yes | +discharged *
      discharge    | others         | no  | +discharged *

      disconnect   | vent           | no  | +disconnected *
      disconnect   | Y              | yes | +touched furnace, +disconnected * at furnace
      disconnect   | coil Y         | yes | +touched furnace, +disconnected * at condenser
      disconnect   | run capacitor  | yes | +touched furnace, +discharged *, +disconnected *
      disconnect   | door switch, furnace switch, contactor, limit | yes | +touched furnace, +disconnected *
      disconnect   | others         | no  | +touched furnace, +disconnected *

      reconnect    | vent           | no  | -disconnected *
      reconnect    | Y              | yes | +touched furnace, -disconnected * at furnace
      reconnect    | coil Y         | yes | +touched furnace, -disconnected * at condenser
      reconnect    | run capacitor  | yes | +touched furnace, +discharged *, -disconnected *
      reconnect    | door switch, furnace switch, contactor, limit | yes | +touched furnace, -disconnected *
      reconnect    | others         | no  | +touched furnace, -disconnected *

      replace      | vent           | yes | +repaired *
      replace      | run capacitor  | yes | +touched furnace, +discharged *, +repaired *
      replace      | door switch, furnace switch, Y, coil Y, contactor | yes | +touched furnace, +repaired *
      replace      | limit          | yes | +touched furnace, +reset *, +repaired *
      replace      | others         | no  | +touched furnace, +repaired *

      repair       | vent           | yes | +repaired *
      repair       | run capacitor  | yes | +touched furnace, +discharged *, +repaired *
      repair       | door switch, furnace switch, Y, coil Y, contactor | yes | +touched furnace, +repaired *
      repair       | limit          | yes | +touched furnace, +reset *, +repaired *
      repair       | others         | no  | +touched furnace, +repaired *

      reset        | limit          | yes | +reset *
      reset        | others         | no  |

      restore      | Y              | yes | -bypassed *, -open *, -isolated *, -disconnected * at furnace
      restore      | coil Y         | yes | -bypassed *, -open *, -isolated *, -disconnected * at condenser
      restore      | vent           | no  | -bypassed *, -open *, -isolated *, -disconnected *
      restore      | thermostat off | no  | -bypassed *, -open *, -isolated *, -disconnected *
      restore      | others         | yes | -bypassed *, -open *, -isolated *, -disconnected *

      known source | others         | yes | +meter proved *
      """;

  private static final Set<String> THINGS = Set.of("blower door", "door switch", "furnace switch", "thermostat off",
      "Y", "coil Y", "contactor", "run capacitor", "limit", "vent");

  private static final Vocabulary SYSTEM = new Vocabulary("sample", "Sample",
      Map.of("furnace", new Location("furnace", Optional.of("blower door"), false),
          "condenser", new Location("condenser", Optional.empty(), false)),
      Map.of("y", new Point("Y", Set.of("furnace", "condenser"), OptionalDouble.empty()),
          "coil y", new Point("coil Y", Set.of("condenser"), OptionalDouble.empty())),
      Map.of("thermostat",
          new Control("thermostat", Role.SELECTOR, List.of("cooling", "off"), Set.of("furnace"), false),
          "furnace switch", new Control("furnace switch", Role.ISOLATOR, List.of(), Set.of("furnace"), false),
          "door switch", new Control("door switch", Role.INTERLOCK, List.of(), Set.of("furnace"), false)),
      Map.of(),
      Map.of("contactor", new Part("contactor", "relay"), "run capacitor", new Part("run capacitor", "capacitor"),
          "limit", new Part("limit", "switch", false, true),
          "vent", new Part("vent", Vocabulary.OUTSIDE)),
      Map.of(), Map.of());

  private record Row(String action, String thing, boolean accepted, Set<String> changes) {

    /** A line's rows, one for each of its things. */
    static Stream<Row> of(String line) {
      List<String> cells = cells(line);
      Set<String> things = cells.get(1).equals("others") ? others(cells.get(0)) : things(cells);
      return things.stream().map(thing -> new Row(cells.get(0), thing, cells.get(2).equals("yes"),
          changes(cells.get(3).replace("*", Names.key(thing)))));
    }

    /** The things that no other line of the action names. */
    private static Set<String> others(String action) {
      Set<String> others = new TreeSet<>(THINGS);
      lines().map(Row::cells).filter(cells -> cells.get(0).equals(action))
          .forEach(cells -> others.removeAll(things(cells)));
      return others;
    }

    private static List<String> cells(String line) {
      return Arrays.stream(line.split("\\|", -1)).map(String::strip).toList();
    }

    private static Set<String> things(List<String> cells) {
      return Set.of(cells.get(1).split(", "));
    }

    private static Set<String> changes(String cell) {
      return sorted(Arrays.stream(cell.split(", ")).filter(change -> !change.isEmpty()));
    }
  }

  private static Stream<String> lines() {
    return TABLE.lines().filter(line -> !line.isBlank());
  }

  static Stream<Row> rows() {
    return lines().flatMap(Row::of);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void actionDoesWhatTheTableSays(Row row) {
    TreeReader.Read read = read(row.action, row.thing);
    var actions = read.tree().steps().get(0).actions();
    assertEquals(1, actions.size());
    assertEquals(row.changes, sorted(actions.get(0).changes().stream().map(ActionTableTest::written)));
    assertEquals(row.accepted,
        read.problems().stream().noneMatch(problem -> problem.code().name().startsWith("unknown-")));
  }

  @Test
  void everyActionMeetsEveryKindOfThing() {
    List<String> expected = Arrays.stream(ActionKind.values()).map(ActionKind::words)
        .flatMap(action -> THINGS.stream().map(thing -> action + " " + thing)).sorted().toList();
    assertEquals(expected, rows().map(row -> row.action + " " + row.thing).sorted().toList());
  }

  private static Set<String> sorted(Stream<String> words) {
    return words.collect(Collectors.toCollection(TreeSet::new));
  }

  private static TreeReader.Read read(String action, String thing) {
    String text = "---\ntitle: Sample\ncomplaint: Any\nsystem: sample\n---\n\n## Do\n\n```task\n" + action + ": "
        + thing + "\nat: furnace\n```\n\n- done: [End](#end)\n\n## End\n\n```finding\nhealthy: yes\n```\n";
    var shared = new Shared(Map.of("sample", SYSTEM), Map.of(), Map.of(), Map.of(), Map.of(),
        Map.of(), Set.of("sample"));
    return TreeReader.read("sample", DocumentReader.read(new Source("trees/sample.md", text)), shared);
  }

  private static String written(StateChange change) {
    if (change instanceof StateChange.SetPosition set) {
      return set.control() + " = " + set.position();
    }
    return change instanceof StateChange.Begin begin ? "+" + words(begin.condition()) + " " + begin.key()
        : "-" + words(((StateChange.End) change).condition()) + " " + ((StateChange.End) change).key();
  }

  private static String words(EquipmentCondition condition) {
    return condition.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
