package rungbook.circuit.sequence;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.BranchAdmittance;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.Phasor;

/** The levels of loads and fuses at their very limits, from voltages whose magnitudes are whole numbers. */
class LoadLevelsTest {

  private static final double PICK_UP_VOLTS = 20;
  private static final double DROP_OUT_VOLTS = 10;
  private static final double HUM_SHARE = 0.25;

  /** Between nodes 1 and 2, neither of which is ground. */
  private static final Branch BRANCH = new Branch("coil", "coil", 1, 2, Branch.Kind.LOAD, draw -> Phasor.ONE,
      draw -> Phasor.ONE, draw -> Phasor.ONE);

  /** Node voltages whose difference is these multiples of 3 + j4, which is 5 V: one a sample. */
  private static ComplexRows fives(double... multiples) {
    var volts = new ComplexRows(3, multiples.length);
    for (int s = 0; s < multiples.length; s++) {
      volts.set(1, s, new Phasor(3 * multiples[s] + 7, 4 * multiples[s] + 9));
      volts.set(2, s, new Phasor(7, 9));
    }
    return volts;
  }

  private static double[] each(double value, int samples) {
    double[] values = new double[samples];
    Arrays.fill(values, value);
    return values;
  }

  /** One load between the two nodes, and one fuse. */
  private static LoadLevels levels(double share, double... multiples) {
    int samples = multiples.length;
    var levels = new LoadLevels(1, 1, new LevelRows(samples));
    levels.updateLoad(0, fives(multiples), BRANCH, each(share, samples), each(PICK_UP_VOLTS, samples),
        each(DROP_OUT_VOLTS, samples), HUM_SHARE);
    return levels;
  }

  /** It pulls in at 20 V, holds at 10 V and hums at 5 V, a quarter of 20 V: each limit itself is enough. */
  @ParameterizedTest
  @CsvSource({"4.001, 3", "4, 3", "3.999, 2", "2, 2", "1.999, 1", "1, 1", "0.999, 0"})
  void aLimitIsEnoughAndLessIsNot(double multiple, int level) {
    assertArrayEquals(new byte[] {(byte) level}, levels(1, multiple).loadsOf(0));
  }

  /** Half of 20 V hold and do not pull in; a quarter of it hums. */
  @ParameterizedTest
  @CsvSource({"1, 3", "0.5, 2", "0.25, 1", "0.125, 0"})
  void aLoadGetsItsShareOfTheBranch(double share, int level) {
    assertArrayEquals(new byte[] {(byte) level}, levels(share, 4).loadsOf(0));
  }

  /** 5 V on a contact of |3 + j4| = 5 S are 25 A. */
  @ParameterizedTest
  @CsvSource({"25, false", "24.99, true"})
  void aFuseCarriesItsLimitAndNoMore(double mostAmps, boolean overloaded) {
    LoadLevels levels = levels(1, 1);
    levels.updateFuse(0, fives(1), new BranchAdmittance(1, 2, new double[] {3}, new double[] {4}), mostAmps);
    assertArrayEquals(new boolean[] {overloaded}, levels.fusesOf(0));
  }

  @Test
  void samplesStayTogetherWhileTheirLoadsAndFusesAreAlike() {
    LoadLevels levels = levels(1, 4, 0, 4, 0);
    assertEquals(Set.of(List.of(0, 2), List.of(1, 3)), groups(levels, 0, 1, 2, 3));
    assertEquals(Set.of(List.of(1, 3)), groups(levels, 1, 3));
    levels.updateFuse(0, fives(0, 0, 1, 0), new BranchAdmittance(1, 2, each(3, 4), each(4, 4)), 24);
    assertEquals(Set.of(List.of(0), List.of(2), List.of(1, 3)), groups(levels, 0, 1, 2, 3));
  }

  private static Set<List<Integer>> groups(LoadLevels levels, int... samples) {
    return levels.split(samples).stream().map(group -> Arrays.stream(group).boxed().toList())
        .collect(Collectors.toSet());
  }
}
