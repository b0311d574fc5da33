package rungbook.rules.readings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.BitSet;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rungbook.tree.Readings.Taken;

class IntervalSetTest {

  @Test
  void agreesWithMarkingEveryCount() {
    Random random = new Random(3);
    for (int round = 0; round < 500; round++) {
      IntervalSet covered = new IntervalSet();
      BitSet marked = new BitSet();
      for (int i = 0; i < 12; i++) {
        int from = random.nextInt(60);
        Taken span = new Taken(0, from, from + random.nextInt(12));
        boolean all = marked.nextClearBit((int) span.from()) > span.to();
        assertEquals(all, covered.holdsAll(span));
        covered.add(span);
        marked.set((int) span.from(), (int) span.to() + 1);
      }
    }
  }
}
