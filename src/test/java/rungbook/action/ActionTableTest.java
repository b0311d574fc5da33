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
import rungbook.system.Vocabulary.Control;
import rungbook.system.Vocabulary.Location;
import rungbook.system.Vocabulary.Part;
import rungbook.system.Vocabulary.Point;
import rungbook.system.Vocabulary.Role;
import rungbook.system.Vocabulary;
import rungbook.tree.Shared;
import rungbook.tree.reader.TreeReader;

/**
 * Every action on every kind of thing, done at the furnace: whether the thing will do, and what changes. The table is
 * written from docs/tree-text.md, not from the code: {@code +} begins, {@code -} ends.
 */
class ActionTableTest {

  private static final String TABLE = """
      set          | blower door    | no  |
      set          | door switch    | no  |
      set          | furnace switch | no  |
      set          | thermostat off | yes | thermostat = off
      set          | Y              | no  |
      set          | coil Y         | no  |
      set          | contactor      | no  |
      set          | run capacitor  | no  |

      open         | blower door    | yes | +open blower door
      open         | door switch    | no  | +open door switch
      open         | furnace switch | no  | +open furnace switch
      open         | thermostat off | no  | +open thermostat off
      open         | Y              | no  | +open y
      open         | coil Y         | no  | +open coil y
      open         | contactor      | no  | +open contactor
      open         | run capacitor  | no  | +open run capacitor

      close        | blower door    | yes | -open blower door
      close        | door switch    | no  | -open door switch
      close        | furnace switch | no  | -open furnace switch
      close        | thermostat off | no  | -open thermostat off
      close        | Y              | no  | -open y
      close        | coil Y         | no  | -open coil y
      close        | contactor      | no  | -open contactor
      close        | run capacitor  | no  | -open run capacitor

      bypass       | blower door    | no  | +bypassed blower door
      bypass       | door switch    | yes | +bypassed door switch
      bypass       | furnace switch | no  | +bypassed furnace switch
      bypass       | thermostat off | no  | +bypassed thermostat off
      bypass       | Y              | no  | +bypassed y
      bypass       | coil Y         | no  | +bypassed coil y
      bypass       | contactor      | no  | +bypassed contactor
      bypass       | run capacitor  | no  | +bypassed run capacitor

      isolate      | blower door    | no  | +isolated blower door
      isolate      | door switch    | no  | +isolated door switch
      isolate      | furnace switch | yes | +isolated furnace switch
      isolate      | thermostat off | no  | +isolated thermostat off
      isolate      | Y              | no  | +isolated y
      isolate      | coil Y         | no  | +isolated coil y
      isolate      | contactor      | no  | +isolated contactor
      isolate      | run capacitor  | no  | +isolated run capacitor

      tag out      | blower door    | no  | +isolated blower door, +tagged out blower door
      tag out      | door switch    | no  | +isolated door switch, +tagged out door switch
      tag out      | furnace switch | yes | +isolated furnace switch, +tagged out furnace switch
      tag out      | thermostat off | no  | +isolated thermostat off, +tagged out thermostat off
      tag out      | Y              | no  | +isolated y, +tagged out y
      tag out      | coil Y         | no  | +isolated coil y, +tagged out coil y
      tag out      | contactor      | no  | +isolated contactor, +tagged out contactor
      tag out      | run capacitor  | no  | +isolated run capacitor, +tagged out run capacitor

      prove dead   | blower door    | no  | +proved dead furnace
      prove dead   | door switch    | no  | +proved dead furnace
      prove dead   | furnace switch | no  | +proved dead furnace
      prove dead   | thermostat off | no  | +proved dead furnace
      prove dead   | Y              | yes | +proved dead furnace
      prove dead   | coil Y         | yes | +proved dead furnace
      prove dead   | contactor      | no  | +proved dead furnace
      prove dead   | run capacitor  | no  | +proved dead furnace

      discharge    | blower door    | no  | +discharged blower door
      discharge    | door switch    | no  | +discharged door switch
      discharge    | furnace switch | no  | +discharged furnace switch
      discharge    | thermostat off | no  | +discharged thermostat off
      discharge    | Y              | no  | +discharged y
      discharge    | coil Y         | no  | +discharged coil y
      discharge    | contactor      | no  | +discharged contactor
      discharge    | run capacitor  | yes | +discharged run capacitor

      disconnect   | blower door    | no  | +touched furnace, +disconnected blower door
      disconnect   | door switch    | yes | +touched furnace, +disconnected door switch
      disconnect   | furnace switch | yes | +touched furnace, +disconnected furnace switch
      disconnect   | thermostat off | no  | +touched furnace, +disconnected thermostat off
      disconnect   | Y              | yes | +touched furnace, +disconnected y at furnace
      disconnect   | coil Y         | yes | +touched furnace, +disconnected coil y at condenser
      disconnect   | contactor      | yes | +touched furnace, +disconnected contactor
      disconnect   | run capacitor  | yes | +touched furnace, +discharged run capacitor, +disconnected run capacitor

      reconnect    | blower door    | no  | +touched furnace, -disconnected blower door
      reconnect    | door switch    | yes | +touched furnace, -disconnected door switch
      reconnect    | furnace switch | yes | +touched furnace, -disconnected furnace switch
      reconnect    | thermostat off | no  | +touched furnace, -disconnected thermostat off
      reconnect    | Y              | yes | +touched furnace, -disconnected y at furnace
      reconnect    | coil Y         | yes | +touched furnace, -disconnected coil y at condenser
      reconnect    | contactor      | yes | +touched furnace, -disconnected contactor
      reconnect    | run capacitor  | yes | +touched furnace, +discharged run capacitor, -disconnected run capacitor

      replace      | blower door    | no  | +touched furnace, +replaced blower door
      replace      | door switch    | yes | +touched furnace, +replaced door switch
      replace      | furnace switch | yes | +touched furnace, +replaced furnace switch
      replace      | thermostat off | no  | +touched furnace, +replaced thermostat off
      replace      | Y              | yes | +touched furnace, +replaced y
      replace      | coil Y         | yes | +touched furnace, +replaced coil y
      replace      | contactor      | yes | +touched furnace, +replaced contactor
      replace      | run capacitor  | yes | +touched furnace, +discharged run capacitor, +replaced run capacitor

      restore      | blower door    | yes | -bypassed, -open, -isolated blower door, -disconnected blower door
      restore      | door switch    | yes | -bypassed, -open, -isolated door switch, -disconnected door switch
      restore      | furnace switch | yes | -bypassed, -open, -isolated furnace switch, -disconnected furnace switch
      restore      | thermostat off | no  | -bypassed, -open, -isolated thermostat off, -disconnected thermostat off
      restore      | Y              | yes | -bypassed, -open, -isolated y, -disconnected y at furnace
      restore      | coil Y         | yes | -bypassed, -open, -isolated coil y, -disconnected coil y at condenser
      restore      | contactor      | yes | -bypassed, -open, -isolated contactor, -disconnected contactor
      restore      | run capacitor  | yes | -bypassed, -open, -isolated run capacitor, -disconnected run capacitor

      known source | blower door    | yes | +meter proved blower door
      known source | door switch    | yes | +meter proved door switch
      known source | furnace switch | yes | +meter proved furnace switch
      known source | thermostat off | yes | +meter proved thermostat off
      known source | Y              | yes | +meter proved y
      known source | coil Y         | yes | +meter proved coil y
      known source | contactor      | yes | +meter proved contactor
      known source | run capacitor  | yes | +meter proved run capacitor
      """;

  private static final Vocabulary SYSTEM = new Vocabulary("sample", "Sample",
      Map.of("furnace", new Location("furnace", Optional.of("blower door")),
          "condenser", new Location("condenser", Optional.empty())),
      Map.of("y", new Point("Y", Set.of("furnace", "condenser"), OptionalDouble.empty()),
          "coil y", new Point("coil Y", Set.of("condenser"), OptionalDouble.empty())),
      Map.of("thermostat", new Control("thermostat", Role.SELECTOR, List.of("cooling", "off"), Set.of("furnace")),
          "furnace switch", new Control("furnace switch", Role.ISOLATOR, List.of(), Set.of("furnace")),
          "door switch", new Control("door switch", Role.INTERLOCK, List.of(), Set.of("furnace"))),
      Map.of(),
      Map.of("contactor", new Part("contactor", "relay"), "run capacitor", new Part("run capacitor", "capacitor")),
      Map.of());

  private record Row(String action, String thing, boolean accepted, Set<String> changes) {

    static Row of(String line) {
      List<String> cells = Arrays.stream(line.split("\\|", -1)).map(String::strip).toList();
      return new Row(cells.get(0), cells.get(1), cells.get(2).equals("yes"), changes(cells.get(3)));
    }

    /** {@code -open, -isolated y} stands for {@code -open y, -isolated y}. */
    private static Set<String> changes(String cell) {
      Set<String> changes = new TreeSet<>();
      String name = "";
      List<String> written = Arrays.stream(cell.split(", ")).filter(change -> !change.isEmpty()).toList();
      for (int i = written.size() - 1; i >= 0; i--) {
        boolean bare = Set.of("-bypassed", "-open").contains(written.get(i));
        name = bare ? name : written.get(i).substring(written.get(i).indexOf(' '));
        changes.add(bare ? written.get(i) + name : written.get(i));
      }
      return changes;
    }
  }

  static Stream<Row> rows() {
    return TABLE.lines().filter(line -> !line.isBlank()).map(Row::of);
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
    Set<String> things = rows().map(Row::thing).collect(Collectors.toSet());
    Set<String> expected = sorted(Arrays.stream(ActionKind.values()).map(ActionKind::words)
        .flatMap(action -> things.stream().map(thing -> action + " " + thing)));
    assertEquals(expected, sorted(rows().map(row -> row.action + " " + row.thing)));
  }

  private static Set<String> sorted(Stream<String> words) {
    return words.collect(Collectors.toCollection(TreeSet::new));
  }

  private static TreeReader.Read read(String action, String thing) {
    String text = "---\ntitle: Sample\ncomplaint: Any\nsystem: sample\n---\n\n## Do\n\n```task\n" + action + ": "
        + thing + "\nat: furnace\n```\n\n- done: [End](#end)\n\n## End\n\n```finding\nhealthy: yes\n```\n";
    var shared = new Shared(Map.of("sample", SYSTEM), Map.of(), Map.of(), Map.of(), Set.of("sample"));
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
