package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.Samples;
import rungbook.system.BenchSystem;

/** Each sight is answered for itself, however many there are: no machine word is wide enough for all of them. */
class SightsTest {

  private static final String BLOCKS = """
      ```controls
      call: off, on, at bench
      ```

      ```parts
      supply: supply, 24 V, 0.05 ohm, L1 to N
      bond: joint, N to ground
      call contact: contact, L1 to Y, closed when call on
      lamp: load, 24 V, 5 W, Y to N
      ```

      ```faults
      lamp dead: stop lamp
      ```
      """;

  /** Around 32, 64 and 128, where the bits of a word would run out, and far beyond. */
  @Test
  void anyNumberOfSightsIsEachSeenForItself() {
    for (int count : new int[] {1, 2, 31, 32, 33, 63, 64, 65, 66, 127, 128, 129, 200}) {
      boolean[] lampOnly = lampOnly(count);
      var text = new StringBuilder(BLOCKS).append("\n```sights\n");
      for (int i = 0; i < count; i++) {
        text.append("sight ").append(i).append(": at bench, when ").append(lampOnly[i] ? "lamp on" : "call off")
            .append('\n');
      }
      ReadingTable table = table(text.append("```\n").toString());
      for (int i = 0; i < count; i++) {
        assertEquals(lampOnly[i], table.seen(0, 0, table.sights().indexOf("sight " + i)),
            "healthy, " + i + " of " + count);
        assertEquals(false, table.seen(1, 0, table.sights().indexOf("sight " + i)), "lamp dead, " + i + " of " + count);
      }
    }
  }

  private static boolean[] lampOnly(int count) {
    var random = new Random(count);
    boolean[] lampOnly = new boolean[count];
    for (int i = 0; i < count; i++) {
      lampOnly[i] = random.nextBoolean();
    }
    return lampOnly;
  }

  private static ReadingTable table(String blocks) {
    var read = BenchSystem.read("L1 N Y", blocks);
    assertEquals(List.of(), read.problems().stream().map(Systems::text).toList());
    var dictionary = Dictionary.of(read.system(), new Samples(List.of(Draw.MIDDLE)));
    return Whole.table(dictionary, CircuitState.start(read.system().vocabulary()).set("call", "on"), List.of());
  }
}
