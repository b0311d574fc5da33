package rungbook.library.solving;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungbook.ladder.Ladder;
import rungbook.library.Folder;
import rungbook.source.Source;

class SystemReadingsTest {

  private static final String ID = "split-cooling-gas-furnace";

  /** A variant of the system has rungs of its own; both are kept until the text changes. */
  @Test
  void aLadderIsKeptUntilTheTextChanges() throws IOException {
    Source source = Folder.read(Path.of("")).in("shared/systems/").get(ID);
    var readings = new SystemReadings();
    Ladder base = readings.ladder(ID, source, "").orElseThrow();
    Ladder blowerOnY = readings.ladder(ID, source, "blower on Y").orElseThrow();
    assertNotEquals(base, blowerOnY);
    assertSame(base, readings.ladder(ID, new Source(source.name(), source.text()), "").orElseThrow());
    assertSame(blowerOnY, readings.ladder(ID, source, "blower on Y").orElseThrow());
    Source longer = new Source(source.name(), source.text() + "\n");
    Ladder again = readings.ladder(ID, longer, "").orElseThrow();
    assertEquals(base, again);
    assertNotEquals(System.identityHashCode(base), System.identityHashCode(again));
  }

  @Test
  void aTextWithoutACircuitHasNoLadder() {
    Source empty = new Source("shared/systems/empty.md", "---\ntitle: Empty\n---\n");
    assertEquals(Optional.empty(), new SystemReadings().ladder("empty", empty, ""));
  }
}
