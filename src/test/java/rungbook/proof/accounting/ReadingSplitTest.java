package rungbook.proof.accounting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import rungbook.circuit.Reading;
import rungbook.tree.Meter;
import rungbook.tree.Readings;
import rungbook.tree.SingleTree;
import rungbook.tree.Step;

class ReadingSplitTest {

  private static final Meter.Scale SCALE = Meter.common().scale(rungbook.system.Quantity.AC_VOLTS).orElseThrow();

  private static ReadingSplit split(String ways, int samples) {
    String text = "## A\n\n```check\nmeasure: AC volts\nleads: R, C\nexpect: 20 to 30 V\n```\n\n" + ways
        + "\n\n## B\n\n```finding\nhealthy: yes\n```\n";
    Step.MeterCheck check = (Step.MeterCheck) SingleTree.read(text).tree().steps().get(0);
    return new ReadingSplit(Segments.of(Readings.of(check, SCALE)), MeterError.of(SCALE), check.ways().size(), samples);
  }

  /** 20.0 V reads from 19.5 to 20.5 V; shown as 20.0 or more from 19.95 V up. */
  @Test
  void readingAtALimitIsDividedByTheMetersError() {
    ReadingSplit split = split("- 20 to 30: [B](#b)\n- under 20: [B](#b)\n- over 30: [B](#b)", 2);
    split.divide(new double[] {20, 25}, new double[] {1, 0.5});
    assertEquals(0.55, split.of(0)[0], 1e-12);
    assertEquals(0.45, split.of(1)[0], 1e-12);
    assertEquals(0.5, split.of(0)[1], 1e-12);
    assertEquals(0, split.of(1)[1], 1e-12);
  }

  @Test
  void whatNoAnswerTakesIsStuck() {
    ReadingSplit split = split("- 20 to 30: [B](#b)\n- under 20: [B](#b)", 3);
    split.divide(new double[] {40, Reading.UNSTEADY, Reading.OVERLOAD}, new double[] {1, 1, 1});
    assertEquals(1, split.of(Segments.NONE)[0], 1e-12);
    assertEquals(1, split.of(Segments.NONE)[1], 1e-12);
    assertEquals(1, split.of(Segments.NONE)[2], 1e-12);
  }

  @Test
  void chatteringTakesTheWayOfNoReading() {
    ReadingSplit split = split("- 20 to 30: [B](#b)\n- no reading: [B](#b)\n- anything else: [B](#b)", 3);
    split.divide(new double[] {Reading.UNSTEADY, Reading.FLOATING, Reading.OVERLOAD}, new double[] {1, 1, 1});
    assertEquals(1, split.of(1)[0], 1e-12);
    assertEquals(1, split.of(2)[1], 1e-12);
    assertEquals(1, split.of(2)[2], 1e-12);
  }

  @Test
  void wayMayBeTakenWhereItGetsAShare() {
    ReadingSplit split = split("- 20 to 30: [B](#b)\n- 5 to 20: [B](#b)\n- under 5: [B](#b)\n- over 30: [B](#b)", 1);
    for (double reading = -0.013; reading < 650; reading += 0.0371) {
      double read = reading < 0 ? Reading.OVERLOAD : reading;
      split.divide(new double[] {read}, new double[] {1});
      for (int way = 0; way < 4; way++) {
        assertEquals(split.of(way)[0] > 1e-9, split.mayTake(read, way), "way " + way + " at " + read);
      }
    }
  }

  @Test
  void nothingIsLost() {
    ReadingSplit split = split("- 20 to 30: [B](#b)\n- 5 to 20: [B](#b)\n- under 5: [B](#b)\n- over 30: [B](#b)",
        700);
    double[] readings = new double[700];
    double[] weights = new double[700];
    for (int i = 0; i < 700; i++) {
      readings[i] = i * 0.913;
      weights[i] = 1 + i;
    }
    split.divide(readings, weights);
    for (int i = 0; i < 700; i++) {
      double sum = split.of(Segments.NONE)[i];
      for (int way = 0; way < 4; way++) {
        sum += split.of(way)[i];
      }
      assertEquals(weights[i], sum, 1e-9 * weights[i]);
    }
  }
}
