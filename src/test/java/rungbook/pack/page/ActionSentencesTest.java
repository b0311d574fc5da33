package rungbook.pack.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungbook.pack.Samples;
import rungbook.pack.page.ActionSentences.Sentence;
import rungbook.tree.Tree;

class ActionSentencesTest {

  private static List<Sentence> sentences(String lines) {
    Tree tree = Samples.tree("""
        ---
        title: Sample
        complaint: Nothing yet
        system: split-cooling-gas-furnace
        ---

        ## Do it

        ```task
        %s
        ```

        - done: [Fine](#fine)

        ## Fine

        ```finding
        healthy: yes
        ```
        """.formatted(lines));
    return new ActionSentences(tree.system()).of(tree.steps().get(0).actions());
  }

  private static List<String> words(String lines) {
    return sentences(lines).stream().map(Sentence::words).toList();
  }

  @Test
  void actionsKeepTheOrderWritten() {
    assertEquals(
        List.of("Shut off and lock: outdoor disconnect", "Open: electrical cover", "Set: thermostat to cooling"),
        words("isolate: outdoor disconnect\nopen: electrical cover\nset: thermostat cooling"));
  }

  @Test
  void aStageComesByItselfSoNobodyIsToldToSetIt() {
    assertEquals(List.of("Set: thermostat to heating"), words("set: thermostat heating, sequence warm-up"));
  }

  @Test
  void provingDeadNamesEveryPairAndProvesTheMeterTwice() {
    assertEquals(List.of(
        new Sentence("Prove the meter on a known live source: a proving unit"),
        new Sentence("Test each pair on AC volts, leg to leg and each leg to ground, and read no voltage:",
            List.of("L1 to L2", "L1 to ground", "L2 to ground")),
        new Sentence("Prove the meter again on the same source")),
        sentences("prove dead: L1, L2, ground\nknown source: a proving unit"));
  }

  @Test
  void groundIsTestedEvenWhenItIsNotNamed() {
    assertEquals(List.of("R to ground"), rungbook.pack.path.ProvedPairs.all(List.of("R")));
  }

  @Test
  void restoringSaysWhatIsDoneToTheThing() {
    assertEquals(
        List.of("Put back: blower door", "Remove the bypass: door switch",
            "Remove the lock and turn on: furnace switch"),
        words("restore: blower door, door switch, furnace switch"));
  }
}
