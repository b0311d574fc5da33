package rungbook.system;

import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.reader.BaseSystem;
import rungbook.system.reader.SystemReader;

/** A system on one bench, of which a test writes the points and the blocks. */
public final class BenchSystem {

  private static final String TEXT = """
      ---
      title: Bench
      ---

      ```locations
      bench: start
      ```

      ```points
      %s```

      %s""";

  private BenchSystem() {}

  /**
   * @param points names separated by spaces; ground is one anyway
   * @param blocks such as parts and faults, fences included
   */
  public static SystemReader.Read read(String points, String blocks) {
    var lines = new StringBuilder();
    for (String point : (points + " ground").split(" ")) {
      lines.append(point).append(": at bench\n");
    }
    String text = TEXT.formatted(lines, blocks);
    return BaseSystem.read("bench", DocumentReader.read(new Source("shared/systems/bench.md", text)));
  }
}
