package rungbook.pack.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rungbook.library.StarterLibrary;
import rungbook.system.ControlSystem;
import rungbook.system.Fault;

class LevelTest {

  private static final ControlSystem FURNACE = StarterLibrary.LIBRARY.shared().circuits()
      .get("split cooling gas furnace").base();

  private static final Map<String, Level> LEVELS = Map.ofEntries(Map.entry("control fuse open", Level.OPEN_FUSE),
      Map.entry("furnace breaker tripped", Level.OPEN_FUSE), Map.entry("furnace switch off", Level.OPEN_CONTACT),
      Map.entry("drain pan full", Level.OPEN_CONTACT), Map.entry("Y cable open", Level.OPEN_WIRE),
      Map.entry("inducer motor open", Level.OPEN_LOAD), Map.entry("thermostat dead", Level.OPEN_LOAD),
      Map.entry("contactor welded closed", Level.STUCK_CLOSED),
      Map.entry("R splice high resistance", Level.RESISTANCE), Map.entry("compressor grounded", Level.SHORT),
      Map.entry("transformer weak", Level.WEAK), Map.entry("gas valve stuck open", Level.ANY));

  private static Fault fault(String name) {
    return FURNACE.faults().stream().filter(fault -> fault.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void aFaultsLevelIsWhatItDoesToTheCircuit() {
    LEVELS.forEach((name, level) -> assertEquals(level, Level.of(List.of(fault(name)), FURNACE), name));
  }

  @Test
  void twoFaultsAreALevelOfTheirOwn() {
    assertEquals(Level.TWO_FAULTS, Level.of(List.of(fault("drain pan full"), fault("Y cable open")), FURNACE));
  }
}
