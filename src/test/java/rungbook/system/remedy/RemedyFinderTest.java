package rungbook.system.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.Names;
import rungbook.system.reader.VariantsReader;

/** Where a technician would put each fault right. Common practice, no source. */
class RemedyFinderTest {

  private static final String FURNACE = "split-cooling-gas-furnace";

  private static final Map<String, Map<String, Remedy>> REMEDIES = new ConcurrentHashMap<>();

  /** Each system's text is read once for all tests. */
  private static Map<String, Remedy> remedies(String system) throws IOException {
    Map<String, Remedy> known = REMEDIES.get(system);
    if (known == null) {
      known = read(system);
      REMEDIES.put(system, known);
    }
    return known;
  }

  private static Map<String, Remedy> read(String system) throws IOException {
    Path file = Path.of("shared/systems", system + ".md");
    var document = DocumentReader.read(new Source(file.toString(), Files.readString(file)));
    return RemedyFinder.of(VariantsReader.read(system, document).systems());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "contactor coil open | contactor",
      "contactor stuck open | contactor pole 1",
      "contactor stuck open | contactor",
      "Y outdoor cable open | Y outdoor cable",
      "Y outdoor cable open | outdoor cable",
      "run capacitor open at Fan | run capacitor",
      "run capacitor weak at Herm | run capacitor",
      "contactor dirty | contactor",
      "contactor pole 1 pitted | contactor",
      "outdoor disconnect fuse open | outdoor disconnect",
      "transformer on wrong tap | transformer",
      "thermostat dead | thermostat",
      "thermostat fan contact open | thermostat",
      "flame sensor dirty | flame sensor",
      "board inducer relay open | control board",
      "R shorted to G in thermostat cable | cable",
      "Y and G crossed at furnace | G cable",
      "compressor overload open | compressor"})
  void isWhereThePartIs(String fault, String thing) throws IOException {
    Remedy remedy = remedies(FURNACE).get(Names.key(fault));
    assertTrue(remedy.isAt(Names.key(thing)), remedy.toString());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "contactor coil open | contactor pole 1",
      "contactor coil open | run capacitor",
      "Y outdoor cable open | C outdoor cable",
      "Y outdoor cable open | cable",
      "R shorted to G in thermostat cable | thermostat",
      "board inducer relay open | inducer motor"})
  void isNotInItsNeighbors(String fault, String thing) throws IOException {
    Remedy remedy = remedies(FURNACE).get(Names.key(fault));
    assertFalse(remedy.isAt(Names.key(thing)), remedy.toString());
  }

  @Test
  void aSwitchOfWhichEveryPoleIsOpenIsFoundOff() throws IOException {
    Map<String, Remedy> remedies = remedies(FURNACE);
    assertEquals(Optional.of("furnace switch"), remedies.get("furnace switch off").foundOff());
    assertEquals(Optional.of("condenser breaker"), remedies.get("condenser breaker tripped").foundOff());
    assertEquals(Optional.of("outdoor disconnect"), remedies.get("outdoor disconnect pulled").foundOff());
    assertEquals(Optional.empty(), remedies.get("outdoor disconnect fuse open").foundOff());
    assertEquals(Optional.empty(), remedies.get("float switch open").foundOff(), "no power switch");
    assertEquals(Optional.empty(), remedies.get("control fuse open").foundOff(), "no control");
  }

  @ParameterizedTest
  @ValueSource(strings = {FURNACE, "heat-pump", "fan-coil-electric-heat"})
  void everyFaultIsSomewhere(String system) throws IOException {
    remedies(system).forEach((fault, remedy) -> {
      assertFalse(remedy.sites().isEmpty(), fault);
      remedy.sites().forEach(site -> assertFalse(site.isEmpty(), fault));
    });
  }
}
