package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungbook.browser.Browser;
import rungbook.circuit.export.PageSolver;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.Samples;
import rungbook.system.ControlSystem;
import rungbook.system.SystemVariants;

/** The solver of a practice page against ngspice, on the netlists by hand with one fault or none that set nothing. */
@Tag("browser")
class PageNetlistTest {

  private static final double RELATIVE = 1e-6;

  /** The reading of the first case, or of the healthy system if there is none, between two points. */
  private static final String READ = """
      const node = point => point === 'ground' ? 0 : data.variants[0].p.find(p => data.names[p[0]] === point)[2];
      const circuit = rungbook.circuit(data, 0, 0, data.variants[0].k.length ? 0 : -1);
      const settled = circuit.settle({ at: {}, off: {}, bypassed: {}, loose: {}, open: {}, replaced: {} });
      return String(circuit.read(settled, arguments[0], node(arguments[1]), node(arguments[2])));""";

  private static final Map<String, String> DIALS = Map.of("VOLTS", "volts", "VOLTS_LOW_IMPEDANCE", "low");

  @TempDir
  private Path folder;

  @Test
  void readsWhatNgspiceReads() throws Exception {
    int compared = 0;
    try (Browser browser = Browser.start()) {
      for (Path file : HandNetlistTest.netlists()) {
        List<String> lines = Files.readAllLines(file);
        String[] read = HandNetlistTest.only(lines, "*read ").split(" ");
        if (DIALS.containsKey(read[0])
            && lines.stream().noneMatch(line -> line.startsWith("*then ") || line.startsWith("*second "))) {
          browser.open(page(system(lines)));
          double ours = Double.parseDouble((String) browser.run(READ, DIALS.get(read[0]), key(read[1]), key(read[2])));
          double theirs = HandNetlistTest.ngspice(lines, read[4], read[5]);
          assertEquals(theirs, ours, RELATIVE * theirs, lines.get(0));
          compared++;
        }
      }
    }
    assertTrue(compared > 12, compared + " netlists");
  }

  private static String key(String point) {
    return point.toLowerCase(Locale.ROOT);
  }

  private static ControlSystem system(List<String> lines) {
    String[] parts = lines.stream().filter(line -> line.startsWith("*part ")).map(line -> line.substring(6))
        .toArray(String[]::new);
    return Trial.read(HandNetlistTest.only(lines, "*points "), "", HandNetlistTest.effect(lines, "fault"), parts)
        .system();
  }

  private Path page(ControlSystem system) throws IOException {
    return Files.writeString(folder.resolve("page.html"), PageSolver.page(new SystemVariants(system, List.of()),
        new Samples(List.of(Draw.MIDDLE)), ""));
  }
}
