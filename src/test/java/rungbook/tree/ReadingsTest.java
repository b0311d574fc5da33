package rungbook.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.Quantity;
import rungbook.tree.reader.TreeReader;

class ReadingsTest {

  private static final String TREE = """
      ---
      title: t
      complaint: c
      ---

      ## Y at the board

      ```check
      measure: AC volts
      leads: Y, C
      expect: 24 to 28 V
      ```

      - 24 to 28: [Good](#good)
      - 5 to 24: [Weak](#weak)
      - under 5: [None](#none)
      - over 28: [High](#high)

      ## Good

      ```finding
      healthy: yes
      ```

      ## Weak

      ```finding
      fault: weak supply
      refer: a senior technician
      ```

      ## None

      ```finding
      fault: no supply
      refer: a senior technician
      ```

      ## High

      ```finding
      fault: high supply
      refer: a senior technician
      ```
      """;

  private final Tree tree = SingleTree.read(new Source("trees/t.md", TREE)).tree();
  private final Readings readings = Readings.of((Step.MeterCheck) tree.steps().get(0),
      tree.meter().scale(Quantity.AC_VOLTS).orElseThrow());

  @Test
  void endSharedWithTheExpectedWindowBelongsToIt() {
    assertEquals(0, readings.wayOf(240).getAsInt());
    assertEquals(1, readings.wayOf(239).getAsInt());
  }

  @Test
  void underAndOverLeaveTheirEndToTheNeighbor() {
    assertEquals(1, readings.wayOf(50).getAsInt());
    assertEquals(2, readings.wayOf(49).getAsInt());
    assertEquals(0, readings.wayOf(280).getAsInt());
    assertEquals(3, readings.wayOf(281).getAsInt());
  }

  @Test
  void overTakesAnOverload() {
    assertEquals(3, readings.wayOfOverload().getAsInt());
    assertTrue(readings.wayOfNoReading().isEmpty());
  }

  @Test
  void showsReadingsAsTheDisplayDoes() {
    assertEquals("24.0 V", readings.show(240));
  }

  @Test
  void everyStepIsReadWithoutAProblem() {
    assertEquals(java.util.List.of(), TreeReader.read("t", DocumentReader.read(new Source("trees/t.md", TREE)),
        SingleTree.NOTHING_SHARED).problems());
    assertEquals(5, tree.steps().size());
  }
}
