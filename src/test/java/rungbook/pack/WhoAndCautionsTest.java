package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import rungbook.pack.page.Edition;

/** Whom a step is for and what can hurt there come before what to do, and the start page explains both. */
class WhoAndCautionsTest {

  private static final String PAGE = Samples
      .text(Samples.pack(Samples.tree("""
          ---
          title: Line voltage
          complaint: Anything.
          system: split-cooling-gas-furnace
          ---

          ## L1 to N

          ```check
          measure: AC volts
          leads: L1, N
          at: furnace
          expect: 110 to 130 V
          who: qualified person, direct supervision
          cautions: sharp edges, line voltage
          ```

          - 110 or more: [Fine](#fine)
          - under 110: [Fine](#fine)

          ## Fine

          ```finding
          healthy: yes
          ```
          """), Edition.draft()).inFolder());

  private static final String START = between("id=\":start\"", "</section>");
  private static final String STEP = between("id=\"l1-to-n\"", "</section>");

  @Test
  void aStepSaysWhomItIsForThenWhatCanHurtThenWhatToDo() {
    assertInOrder(STEP, "class=\"who\"", "Qualified person</a><span class=\"rule\"> — 29 CFR 1910.332</span>; ",
        "Apprentice under direct supervision</a>", "DANGER", "class=\"hazard\"", "class=\"avoid\"", "CAUTION",
        "class=\"hazard\"", "class=\"avoid\"", "Measure ");
  }

  @Test
  void aStepShowsNoMoreOfACautionThanItsTitleAndTwoLines() {
    assertEquals(2, STEP.split("class=\"caution ", -1).length - 1);
    String danger = STEP.substring(STEP.indexOf("DANGER"), STEP.indexOf("CAUTION"));
    assertEquals(2, danger.split("<p ", -1).length - 1, danger);
    assertFalse(danger.contains("<ul") || danger.contains("<li"), danger);
  }

  @Test
  void theStartListsEverybodyWhomTheTreeNeedsAndExplainsEach() {
    assertInOrder(START, "Who may do it", "Qualified person</a><span class=\"rule\"> — 29 CFR 1910.332",
        "What can hurt", "Class 00",
        "id=\":who-qualified-person\"", "id=\":who-direct-supervision\"");
    assertFalse(START.contains("EPA 608-certified technician</a>"), "nobody whom no step names");
  }

  @Test
  void aStepForEverybodySaysNothing() {
    assertFalse(between("id=\"fine\"", "</section>").contains("class=\"who\""));
  }

  private static void assertInOrder(String text, String... parts) {
    int from = 0;
    for (String part : parts) {
      int at = text.indexOf(part, from);
      assertTrue(at >= 0, () -> "`" + part + "` is missing or out of order in " + text);
      from = at + part.length();
    }
  }

  private static String between(String from, String to) {
    int start = PAGE.indexOf(from);
    return PAGE.substring(start, PAGE.indexOf(to, start));
  }
}
