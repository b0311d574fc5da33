package rungbook.source;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NearestTest {

  @Test
  void findsLettersSwappedLeftOutAndChanged() {
    assertEquals(Optional.of("measure"), Nearest.to("mesaure", List.of("minutes", "measure")));
    assertEquals(Optional.of("minutes"), Nearest.to("minuts", List.of("minutes", "measure")));
    assertEquals(Optional.of("Y"), Nearest.to("y", List.of("R", "Y")));
  }

  @Test
  void namesTooFarAwayAreNoHelp() {
    assertEquals(Optional.empty(), Nearest.to("furnace", List.of("condenser", "attic")));
    assertEquals(Optional.empty(), Nearest.to("x".repeat(1000), List.of("x".repeat(1000) + "y")));
  }

  /** Wagner and Fischer's well-known pair, and one adjacent swap. */
  @Test
  void distanceCountsChangesAndSwaps() {
    assertEquals(3, Nearest.distance("kitten", "sitting"));
    assertEquals(1, Nearest.distance("leads", "laeds"));
    assertEquals(5, Nearest.distance("", "leads"));
  }
}
