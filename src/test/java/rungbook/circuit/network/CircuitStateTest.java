package rungbook.circuit.network;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rungbook.action.EquipmentCondition;
import rungbook.action.StateChange;
import rungbook.system.BenchSystem;
import rungbook.system.Vocabulary;

class CircuitStateTest {

  private static Vocabulary words(String... controls) {
    return BenchSystem.read("L1", "```controls\n" + String.join("\n", controls) + "\n```\n").system().vocabulary();
  }

  private final Vocabulary words = words("call: off, on, at bench", "fan: auto, low, high, at bench",
      "main: isolates power, at bench");

  private final CircuitState start = CircuitState.start(words);

  /** Every set named after its own key, so that none is taken for another. */
  private CircuitState worked() {
    return start.isolate("Main").bypass("Latch").disconnect("Y").open("Door").replace("Fuse");
  }

  @Test
  void startsWithEverySelectorAtItsFirstPosition() {
    assertEquals(new CircuitState(Map.of("call", "off", "fan", "auto"), Set.of(), Set.of(), Set.of(), Set.of(),
        Set.of()), start);
  }

  @Test
  void keepsEachThingThatIsDone() {
    assertEquals(new CircuitState(Map.of("call", "on", "fan", "auto"), Set.of("main"), Set.of("latch"), Set.of("y"),
        Set.of("door"), Set.of("fuse")), worked().set("Call", "On"));
  }

  @Test
  void changesBeginAndEndInOrder() {
    Map<EquipmentCondition, String> keys = Map.of(EquipmentCondition.ISOLATED, "main", EquipmentCondition.BYPASSED,
        "latch", EquipmentCondition.DISCONNECTED, "y", EquipmentCondition.OPEN, "door", EquipmentCondition.REPLACED,
        "fuse", EquipmentCondition.TAGGED_OUT, "main");
    List<StateChange> begun = keys.entrySet().stream()
        .<StateChange>map(e -> new StateChange.Begin(e.getKey(), e.getValue())).toList();
    List<StateChange> ended = keys.entrySet().stream()
        .<StateChange>map(e -> new StateChange.End(e.getKey(), e.getValue())).toList();
    assertEquals(worked(), start.after(begun));
    assertEquals(start.replace("fuse"), start.after(begun).after(ended), "a new fuse stays new");
    assertEquals(start.set("fan", "low"), start.after(List.of(new StateChange.SetPosition("fan", "high"),
        new StateChange.SetPosition("fan", "low"))));
  }

  @Test
  void oneThingThatEndsLeavesTheOthers() {
    CircuitState both = start.isolate("main").isolate("disconnect");
    assertEquals(start.isolate("disconnect"),
        both.after(List.of(new StateChange.End(EquipmentCondition.ISOLATED, "main"))));
    assertEquals(start.open("door"), both.open("door").withPower());
  }

  /** 2 positions of the call times 3 of the fan; the main switch has none. */
  @Test
  void everyPositionIsEachCombinationOnce() {
    List<CircuitState> all = start.isolate("main").everyPosition(words);
    assertEquals(6, CircuitState.positionCount(words.controls().values()));
    assertEquals(6, all.size());
    assertEquals(Set.of("off auto", "off low", "off high", "on auto", "on low", "on high"), all.stream()
        .map(state -> state.positions().get("call") + " " + state.positions().get("fan")).collect(Collectors.toSet()));
    all.forEach(state -> assertEquals(Set.of("main"), state.off()));
  }

  /** 2 to the 62nd is a long, 2 to the 63rd is more than one. */
  @Test
  void moreCombinationsThanALongAreTheLargestLong() {
    assertEquals(1L << 62, CircuitState.positionCount(twoPositions(62).controls().values()));
    assertEquals(Long.MAX_VALUE, CircuitState.positionCount(twoPositions(63).controls().values()));
    assertEquals(Long.MAX_VALUE, CircuitState.positionCount(twoPositions(70).controls().values()));
  }

  private static Vocabulary twoPositions(int count) {
    return words(IntStream.range(0, count).mapToObj(i -> "call " + i + ": off, on, at bench").toArray(String[]::new));
  }
}
