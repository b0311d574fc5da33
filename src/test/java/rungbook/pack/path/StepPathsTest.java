package rungbook.pack.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungbook.pack.Samples;
import rungbook.proof.HighestVoltages;
import rungbook.tree.Tree;

/** What holds on the paths to a step, worked out by hand on a tree whose two paths meet at a check. */
class StepPathsTest {

  private static final Tree TREE = Samples.tree("""
      ---
      title: Sample
      complaint: Nothing yet
      system: split-cooling-gas-furnace
      ---

      ## Which way

      ```check
      look: the display
      cautions: moving fan
      ```

      - on: [Volts first](#volts-first)
      - off: [Cover off](#cover-off)

      ## Volts first

      ```check
      measure: AC volts
      leads: L1, L2
      cautions: line voltage
      ```

      - 200 or more: [Cover off](#cover-off)
      - under 200: [Fine](#fine)

      ## Cover off

      ```task
      isolate: outdoor disconnect
      open: electrical cover
      cautions: line voltage, moving fan
      ```

      - done: [Ohms](#ohms)

      ## Ohms

      ```check
      measure: ohms
      leads: L1, L2
      cautions: line voltage
      ```

      - 5 or more: [Fine](#fine)
      - under 5: [Fine](#fine)

      ## Fine

      ```finding
      healthy: yes
      ```
      """);

  private static final int WHICH_WAY = 0;
  private static final int VOLTS = 1;
  private static final int COVER = 2;
  private static final int OHMS = 3;

  private static final StepPaths PATHS = StepPaths.of(TREE, HighestVoltages.unknown(), step -> true);

  @Test
  void stateIsThatOfThePathsAndAfterIsWhatTheStepChanges() {
    assertEquals(List.of(), PATHS.states().at(COVER).certain());
    assertEquals(List.of("electrical cover off", "outdoor disconnect off"),
        PATHS.states().at(OHMS).certain().stream().sorted().toList());
    assertEquals(List.of(), PATHS.states().at(OHMS).possible());
    assertEquals(List.of("outdoor disconnect off", "electrical cover off"),
        PATHS.states().after(TREE.steps().get(COVER)));
  }

  @Test
  void cautionIsNewUntilEveryPathHasNamedIt() {
    assertTrue(PATHS.cautions().isNew(WHICH_WAY, "moving fan"));
    assertFalse(PATHS.cautions().isNew(COVER, "moving fan"), "both paths come through the first step");
    assertTrue(PATHS.cautions().isNew(COVER, "line voltage"), "one path goes around the volts");
    assertFalse(PATHS.cautions().isNew(OHMS, "line voltage"));
  }

  @Test
  void dialIsSetFirstAndLookedAtWhereThatDependsOnThePath() {
    assertEquals(DialTurn.NONE, PATHS.dial().at(WHICH_WAY));
    assertEquals(DialTurn.SET, PATHS.dial().at(VOLTS));
    assertEquals(DialTurn.TURN, PATHS.dial().at(OHMS), "on one path nobody has set it, on the other it is at volts");
  }

  @Test
  void leadsAreLiveWhereVoltsAreReadOnALine() {
    assertTrue(PATHS.leads().at(VOLTS));
    assertFalse(PATHS.leads().at(OHMS), "ohms are read on dead points");
    assertFalse(PATHS.leads().at(WHICH_WAY));
    assertTrue(PATHS.leads().volts(VOLTS).isEmpty(), "no circuit was solved");
  }

  @Test
  void stepsAheadAreCountedOnTheShortestAndTheLongestPath() {
    assertEquals("2 to 4", PATHS.ahead().words(WHICH_WAY));
    assertEquals("1 to 3", PATHS.ahead().words(VOLTS));
    assertEquals("2", PATHS.ahead().words(COVER));
    assertEquals("1", PATHS.ahead().words(OHMS));
  }
}
