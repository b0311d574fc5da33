package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungbook.circuit.MeterFunction.AMPS;
import static rungbook.circuit.MeterFunction.MICROFARADS;
import static rungbook.circuit.MeterFunction.OHMS;
import static rungbook.circuit.MeterFunction.VOLTS;
import static rungbook.circuit.MeterFunction.VOLTS_LOW_IMPEDANCE;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.Samples;

/** The split system does what a technician finds on such equipment (common practice, no source). */
class OperationTest {

  private static final Dictionary SPLIT = Dictionary.of(Systems.read("split-cooling-gas-furnace"),
      new Samples(List.of(Draw.MIDDLE)));
  private static final CircuitState OFF = CircuitState.start(SPLIT.network().system().vocabulary());
  private static final CircuitState COOLING = OFF.set("thermostat", "cooling");
  private static final CircuitState HEATING = OFF.set("thermostat", "heating");

  /** As coded in {@link Reading}. */
  private static double read(String fault, CircuitState state, MeterFunction meter, String place, String red,
      String black) {
    Probe probe = Leads.at(place, meter, red, black);
    return Whole.table(SPLIT, state, List.of(probe)).reading(SPLIT.cases().indexOf(fault), 0, 0);
  }

  private static double volts(String fault, CircuitState state, String place, String red, String black) {
    return read(fault, state, VOLTS, place, red, black);
  }

  private static boolean seen(String fault, CircuitState state, String sight) {
    ReadingTable table = Whole.table(SPLIT, state, List.of());
    return table.seen(SPLIT.cases().indexOf(fault), 0, table.sights().indexOf(sight));
  }

  /** At the thermostat each terminal shows the supply through the resting load. */
  @Test
  void restingLoadsShowTheSupplyAtTheThermostat() {
    for (String terminal : List.of("Y", "W", "G")) {
      assertEquals(26.4, volts("healthy", OFF, "thermostat", "R", terminal), 0.5, terminal);
    }
  }

  /** At the board a terminal is live only while its call is on. */
  @Test
  void boardTerminalsAreLiveOnlyDuringTheirCall() {
    assertEquals(0, volts("healthy", OFF, "furnace", "Y", "C"), 0.1);
    assertEquals(0, volts("healthy", OFF, "furnace", "W", "C"), 0.1);
    assertEquals(26, volts("healthy", COOLING, "furnace", "Y", "C"), 1);
    assertEquals(26, volts("healthy", COOLING, "furnace", "G", "C"), 1);
    assertEquals(26, volts("healthy", HEATING, "furnace", "W", "C"), 1);
  }

  @Test
  void coolingRunsBlowerContactorCompressorAndFan() {
    for (String sight : List.of("blower running", "contactor pulled in", "compressor running",
        "condenser fan running")) {
      assertTrue(seen("healthy", COOLING, sight), sight);
      assertFalse(seen("healthy", OFF, sight), sight);
    }
    assertEquals(240, volts("healthy", COOLING, "condenser", "T1", "T2"), 8);
    assertEquals(17, read("healthy", COOLING, AMPS, "condenser", "compressor C", "compressor C"), 3);
  }

  @Test
  void heatingEndsWithFlameAndBlowerAndNoIgniter() {
    assertTrue(seen("healthy", HEATING, "burners lit"));
    assertTrue(seen("healthy", HEATING, "blower running"));
    assertFalse(seen("healthy", HEATING, "igniter glowing"));
    assertTrue(seen("healthy", HEATING.set("sequence", "warm-up"), "igniter glowing"));
    assertFalse(seen("healthy", HEATING.set("sequence", "warm-up"), "burners lit"));
  }

  @Test
  void withoutAnIgniterThereIsNoFlame() {
    assertFalse(seen("igniter open", HEATING, "burners lit"));
    assertEquals(120, volts("igniter open", HEATING.set("sequence", "warm-up"), "furnace", "igniter L1", "igniter N"),
        6);
  }

  @Test
  void anOpenSwitchShowsTheSupplyAcrossItself() {
    assertEquals(26,
        volts("low pressure switch open", COOLING, "condenser", "low pressure switch in", "low pressure switch out"),
        1);
    assertEquals(0, volts("healthy", COOLING, "condenser", "low pressure switch in", "low pressure switch out"), 0.1);
  }

  /** A conductor that hangs beside a live one shows volts to a high impedance and none to a low one. */
  @Test
  void strayVoltageGoesAwayWithLowImpedance() {
    assertTrue(volts("contactor coil open", HEATING, "furnace", "Y", "C") > 3);
    assertTrue(read("contactor coil open", HEATING, VOLTS_LOW_IMPEDANCE, "furnace", "Y", "C") < 0.1);
  }

  @Test
  void aBlownFuseStaysBlownUntilItIsReplaced() {
    String fault = "y shorted to c in outdoor cable";
    assertEquals(0, volts(fault, OFF, "furnace", "R", "C"), 0.1);
    assertEquals(26.4, volts(fault, OFF.replace("control fuse"), "furnace", "R", "C"), 0.5);
    assertEquals(0, volts(fault, COOLING.replace("control fuse"), "furnace", "R", "C"), 0.1);
    assertEquals(26, volts(fault, COOLING.replace("control fuse").disconnect("Y outdoor cable"), "furnace", "R", "C"),
        1);
  }

  @Test
  void aWeakSpliceMakesTheContactorChatter() {
    assertEquals(Reading.UNSTEADY, read("r splice high resistance", COOLING, VOLTS, "furnace", "Y", "C"));
  }

  @Test
  void anOpenDoorStopsTheFurnaceAndAHeldSwitchLetsItRun() {
    CircuitState door = COOLING.open("blower door");
    assertEquals(0, volts("healthy", door, "furnace", "R", "C"), 0.1);
    assertEquals(26, volts("healthy", door.bypass("door switch"), "furnace", "R", "C"), 1);
  }

  @Test
  void isolationMakesTheLoadSideDeadAndLeavesTheLineSideLive() {
    CircuitState dead = COOLING.isolate("outdoor disconnect");
    assertEquals(0, volts("healthy", dead, "condenser", "L1", "L2"), 0.1);
    assertEquals(240, volts("healthy", dead, "condenser", "disconnect L1", "disconnect L2"), 8);
  }

  @Test
  void ohmsNeedADeadCircuit() {
    assertEquals(Reading.LIVE, read("healthy", COOLING, OHMS, "condenser", "coil Y side", "coil C side"));
    CircuitState dead = OFF.isolate("furnace switch");
    assertEquals(Reading.OVERLOAD,
        read("contactor coil open", dead, OHMS, "condenser", "coil Y side", "coil C side"));
    assertEquals(12, read("healthy", dead, OHMS, "condenser", "coil Y side", "coil C side"), 0.5);
  }

  @Test
  void aRunCapacitorReadsItsSizeOnceItsLeadsAreOff() {
    CircuitState off = OFF.isolate("outdoor disconnect").disconnect("compressor start lead")
        .disconnect("compressor run lead")
        .disconnect("condenser fan start winding");
    assertEquals(40, read("healthy", off, MICROFARADS, "condenser", "Herm", "cap C"), 0.1);
    assertEquals(0, read("run capacitor open at herm", off, MICROFARADS, "condenser", "Herm", "cap C"), 0.1);
  }

  @Test
  void aWrongTapLowersTheControlVoltageByItsRatio() {
    double right = volts("healthy", OFF, "furnace", "R", "C");
    assertEquals(right * 120 / 208, volts("transformer on wrong tap", OFF, "furnace", "R", "C"), 0.3);
  }
}
