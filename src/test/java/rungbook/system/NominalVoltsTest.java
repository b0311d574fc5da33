package rungbook.system;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.reader.BaseSystem;

/** On the furnace and condenser of the starter library: 120 V and 240 V by its own prose, 24 V control power. */
class NominalVoltsTest {

  private final NominalVolts volts = NominalVolts.of(starter());

  @Test
  void oneLegIsItsOwnVoltageAndTwoLegsAreTwice() {
    assertEquals(120, volts.at(new Terminal("l1", "furnace")));
    assertEquals(240, volts.at(new Terminal("l1", "condenser")));
    assertEquals(240, volts.at(new Terminal("t2", "condenser")));
  }

  @Test
  void theNeutralIsALineAndControlPowerIsNotThoughBothAreBondedToGround() {
    assertTrue(volts.isLine(new Terminal("n", "furnace")));
    assertFalse(volts.isLine(new Terminal("c", "furnace")));
    assertEquals(24, volts.at(new Terminal("y", "condenser")));
    assertEquals(0, volts.at(new Terminal("ground", "furnace")));
  }

  @Test
  void whatThePointSaysCountsIfItIsMore() {
    assertEquals(370, volts.at(new Terminal("herm", "condenser")));
  }

  private static ControlSystem starter() {
    try {
      Path file = Path.of("shared/systems/split-cooling-gas-furnace.md");
      return BaseSystem
          .read("split-cooling-gas-furnace", DocumentReader.read(new Source(file.toString(), Files.readString(file))))
          .system();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
