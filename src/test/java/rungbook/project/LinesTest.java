package rungbook.project;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Lines of Java fit the 120 columns that the formatter breaks at; it leaves alone what is between quotation marks. */
class LinesTest {

  private static final int COLUMNS = 120;

  @Test
  void noLineIsLongerThan120Columns() throws IOException {
    var wide = new ArrayList<String>();
    for (Path file : sources()) {
      addWide(file, wide);
    }
    assertEquals(List.of(), wide);
  }

  private static void addWide(Path file, List<String> wide) throws IOException {
    boolean inTextBlock = false;
    List<String> lines = Files.readAllLines(file);
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      boolean delimiter = line.contains("\"\"\"");
      boolean mayBeWide = inTextBlock || line.matches(".*https?://.*") || cannotBeCut(line);
      if (line.codePointCount(0, line.length()) > COLUMNS && !mayBeWide) {
        wide.add(file + ":" + (i + 1));
      }
      inTextBlock ^= delimiter;
    }
  }

  /** One string without a space to cut it at, such as a pattern or a signature. */
  private static boolean cannotBeCut(String line) {
    return line.strip().matches("(?:\\+ )?\"[^ ]{90,}\"[,;)]*");
  }

  private static List<Path> sources() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src"))) {
      return files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
    }
  }
}
