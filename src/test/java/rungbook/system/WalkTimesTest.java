package rungbook.system;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.reader.WalkTimesReader;

class WalkTimesTest {

  private static final WalkTimes WALKS = WalkTimesReader.read(DocumentReader.read(new Source("s.md", """
      ---
      title: A house
      ---

      ```locations
      hall: start
      furnace: walk 2 min, panel door
      roof unit: walk 3.5 min
      roof edge: walk 1 min, from roof-unit
      ```
      """)));

  @Test
  void walkIsCountedFromTheStart() {
    assertEquals("hall", WALKS.start());
    assertEquals(2, WALKS.minutes("hall", "furnace"));
    assertEquals(2, WALKS.minutes("furnace", "hall"));
    assertEquals(0, WALKS.minutes("furnace", "furnace"));
  }

  @Test
  void twoPlacesMeetWhereTheirWaysPart() {
    assertEquals(5.5, WALKS.minutes("furnace", "roof unit"));
    assertEquals(1, WALKS.minutes("roof edge", "roof unit"));
    assertEquals(6.5, WALKS.minutes("roof edge", "furnace"));
  }

  @Test
  void unknownPlaceCostsNothingRatherThanANumberMadeUp() {
    assertEquals(0, WALKS.minutes("cellar", "furnace"));
  }
}
