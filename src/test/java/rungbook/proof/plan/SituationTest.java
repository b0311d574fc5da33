package rungbook.proof.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungbook.circuit.network.CircuitState;
import rungbook.proof.MadeUp;
import rungbook.tree.Step;

class SituationTest {

  private static CircuitState after(String... lines) {
    Step step = MadeUp
        .tree("one",
            "## Do\n\n```task\n" + String.join("\n", lines)
                + "\nat: attic\n```\n\n- done: [End](#end)\n\n## End\n\n```finding\nhealthy: yes\n```\n")
        .steps().get(0);
    return new Situation(CircuitState.start(MadeUp.WORDS), "hall").after(step).state();
  }

  @Test
  void whatIsDoneStays() {
    CircuitState state = after("set: lever on", "open: door", "bypass: latch", "isolate: main", "replace: fuse");
    assertEquals("on", state.positions().get("lever"));
    assertEquals(List.of(Set.of("door"), Set.of("latch"), Set.of("main"), Set.of("fuse")),
        List.of(state.open(), state.bypassed(), state.off(), state.replaced()));
  }

  @Test
  void restoringUndoesAllThatWasDoneToAThing() {
    CircuitState state = after("open: door", "bypass: latch", "isolate: main", "disconnect: A",
        "restore: door, latch, main, A");
    assertEquals(CircuitState.start(MadeUp.WORDS), state);
  }

  @Test
  void terminalComesOffWhereTheWorkIsDone() {
    assertEquals(Set.of("a at attic"), after("disconnect: A").disconnected());
    assertEquals(Set.of(), after("disconnect: A", "reconnect: A").disconnected());
  }
}
