package rungbook.system.logic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungbook.system.BenchSystem;
import rungbook.system.Terminal;
import rungbook.system.reader.SystemReader;

/** Small circuits that anybody can follow by eye; whole systems are in {@code ContactLogicAgreementTest}. */
class ContactLogicTest {

  private static final String FAN = """
      ```controls
      main: isolates power, at bench
      call: off, on, at bench
      ```

      ```parts
      supply: supply, 120 V, 0.05 ohm, L1 to ground
      bond: joint, N to ground
      main: switch, L1 to L2
      relay: coil, 120 V, 8 VA, A to N
      call contact: contact, L2 to A, closed when call on
      relay contact: contact, L2 to T1, closed when relay on
      feed: wire, T1 to M
      fan: motor, 120 V, 3 A, M to N
      ```

      ```assemblies
      blower: fan
      ```
      """;

  private static final ControlState CALLED = new ControlState(Map.of("call", "on"), Set.of(), Set.of(), Set.of(),
      Set.of());

  private static ContactLogic logic(String blocks) {
    SystemReader.Read read = BenchSystem.read("L1 L2 N A T1 M", blocks);
    assertEquals(List.of(), read.problems().stream().map(problem -> problem.code().name()).toList());
    return ContactLogic.of(read.system());
  }

  private static ControlState without(String thing) {
    return new ControlState(CALLED.positions(), Set.of(), Set.of(), Set.of(thing), Set.of());
  }

  private static Terminal at(String point) {
    return new Terminal(point, "bench");
  }

  @Test
  void aRelayBringsInItsMotor() {
    assertEquals(Set.of("relay", "fan"), logic(FAN).settle(CALLED).loadsOn());
  }

  @Test
  void nothingIsOnBehindASwitchThatIsOff() {
    SettledContacts off = logic(FAN)
        .settle(new ControlState(CALLED.positions(), Set.of("main"), Set.of(), Set.of(), Set.of()));
    assertEquals(Set.of(), off.loadsOn());
    assertTrue(off.isLive(at("l1")));
    assertFalse(off.isLive(at("l2")));
  }

  @Test
  void aPartComesOffByItsNameItsAssemblyOrTheTerminalOfItsWire() {
    for (String thing : List.of("fan", "blower", "feed", "t1 at bench")) {
      assertEquals(Set.of("relay"), logic(FAN).settle(without(thing)).loadsOn(), thing);
    }
  }

  @Test
  void aPointIsLiveAsLongAsItsSwitchIsClosed() {
    SettledContacts on = logic(FAN).settle(CALLED);
    assertTrue(on.isLive(at("m")));
    assertFalse(on.isLiveWithout("main", at("m")));
    assertFalse(on.isLive(at("n")));
    assertFalse(on.isLive(at("nowhere")));
  }

  @Test
  void aMotorIsFedThroughItsSwitchOnly() {
    SettledContacts on = logic(FAN).settle(CALLED);
    assertEquals(List.of("blower"), on.fedThrough("main"));
    assertEquals(List.of(), on.fedThrough("call"));
  }

  /** It opens its own circuit: the search ends, whatever the last round shows. */
  @Test
  void aCircuitThatDoesNotSettleEnds() {
    String chattering = FAN.replace("closed when call on", "closed when not relay on");
    assertTrue(Set.of("relay", "fan").containsAll(logic(chattering.replace("call: off, on, at bench\n", ""))
        .settle(CALLED).loadsOn()));
  }

  /** 240 V across two legs; the third wire is at neither. */
  @Test
  void legsAddUp() {
    String legs = """
        ```parts
        supply: supply, 120 V, 0.05 ohm, L1 to ground, ground to L2
        heater: heater, 240 V, 5 kW, L1 to L2
        lamp: load, 240 V, 5 W, L1 to N
        bond: wire, N to ground
        ```
        """;
    assertEquals(Set.of("heater"), logic(legs).settle(CALLED).loadsOn());
  }

  /** Without a ground, both ends of a source count as live. */
  @Test
  void aSourceWithoutGroundIsLiveAtBothEnds() {
    String loose = """
        ```parts
        supply: supply, 120 V, 0.05 ohm, L1 to N
        lamp: load, 120 V, 5 W, L1 to N
        ```
        """;
    SettledContacts settled = logic(loose).settle(CALLED);
    assertTrue(settled.isLive(at("l1")) && settled.isLive(at("n")));
    assertEquals(Set.of("lamp"), settled.loadsOn());
  }
}
