package rungbook.pack.path;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The wordings of the starter library's own procedures, with the pairs that a person reads out of them. */
class ProvedPairsTest {

  private static Optional<List<String>> worded(String words, String... points) {
    return ProvedPairs.worded("<p>" + words.replaceAll("\\*\\*([^*]*)\\*\\*", "<strong>$1</strong>") + "</p>",
        List.of(points));
  }

  @Test
  void pairsComeInTheOrderOfTheWords() {
    assertEquals(
        Optional.of(List.of("L1 to L2", "T1 to T2", "L1 to ground", "L2 to ground", "T1 to ground", "T2 to ground")),
        worded("On AC volts, read **L1** to **L2**, **T1** to **T2**, and each of the four to **ground**.", "L1", "L2",
            "T1", "T2", "ground"));
  }

  @Test
  void everyPairOfAListAndOneMore() {
    assertEquals(
        Optional.of(List.of("door switch in to L1", "door switch in to N", "door switch in to ground", "L1 to N",
            "L1 to ground", "N to ground", "R to C")),
        worded("Read every pair of **door switch in**, **L1**, **N** and **ground**. Then read **R** to **C**.",
            "door switch in", "L1", "N", "R", "C", "ground"));
  }

  @Test
  void wordsThatLeaveOutAPointAreNotTaken() {
    assertEquals(Optional.empty(), worded("Read **L1** to **ground**.", "L1", "L2", "ground"));
    assertEquals(Optional.empty(),
        worded("Read both sides of the furnace switch, and **L1**, to **N** and to **ground**.", "furnace switch in",
            "L1", "N", "ground"));
  }

  @Test
  void countThatDoesNotFitIsNotTaken() {
    assertEquals(Optional.empty(),
        worded("Read **L1** to **L2**, and each of the four to **ground**.", "L1", "L2", "ground"));
  }
}
