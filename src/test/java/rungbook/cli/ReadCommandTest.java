package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class ReadCommandTest {

  private static final String SYSTEM = "split-cooling-gas-furnace";

  private static Run read(String... words) {
    return Run.in(Path.of("."), words);
  }

  /** A control voltage between 24 and 28 V is good (common practice, no source). */
  @Test
  void theContactorHasItsVoltage() throws IOException {
    Run run = read("read", SYSTEM, "--at", "condenser", "--leads", "Y, C", "--set", "thermostat cooling", "--format",
        "json");
    assertEquals(0, run.exit(), run.err());
    JsonNode json = new ObjectMapper().readTree(run.out());
    double usual = json.get("reading").get("usual").asDouble();
    assertTrue(usual > 24 && usual < 28, run.out());
    assertEquals(1, json.get("on").get("contactor").asDouble());
    assertEquals(1, json.get("seen").get("compressor running").asDouble());
  }

  @Test
  void textSaysWhatIsReadAndWhatRuns() {
    Run run = read("read", "shared/systems/" + SYSTEM + ".md", "--at", "condenser", "--leads", "Y, C", "--set",
        "thermostat cooling", "--fault", "Y outdoor cable open");
    assertEquals(0, run.exit(), run.err());
    assertTrue(run.out().contains("AC volts, Y at condenser (red) to C at condenser (black):"), run.out());
    assertTrue(run.out().contains("low 0 V, usual 0 V, highest 0 V"), run.out());
    assertTrue(run.out().contains("seen: blower running, board code steady, float switch in the red wire"), run.out());
  }

  @Test
  void anUnknownNameIsMisuseWithTheNearestName() {
    Run run = read("read", SYSTEM, "--set", "thermostat coling");
    assertEquals(2, run.exit());
    assertEquals("rungbook: --set: `thermostat` has no position `coling`\n  hint: write `cooling`\n", run.err());
  }

  @Test
  void anUnknownSystemAndAnUnknownMeterAreMisuse() {
    assertTrue(read("read", "heat-pumb").err().contains("hint: write `heat-pump`"));
    assertTrue(read("read", SYSTEM, "--meter", "field-metr").err().contains("hint: write `field-meter`"));
    assertEquals(2, read("read", SYSTEM, "--format", "sarif").exit());
  }
}
