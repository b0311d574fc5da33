package rungbook.circuit.network;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import org.junit.jupiter.api.Test;

class RowPoolTest {

  private final RowPool pool = new RowPool(2);

  private ComplexRows used() {
    ComplexRows rows = pool.take(1);
    rows.set(0, 0, new Phasor(1, 2));
    rows.set(0, 1, new Phasor(3, 4));
    return rows;
  }

  @Test
  void rowsThatComeBackGoOutAsZeros() {
    ComplexRows rows = used();
    pool.give(rows);
    assertNotSame(rows, pool.take(3));
    assertSame(rows, pool.take(1));
    assertArrayEquals(new double[2], rows.re[0]);
    assertArrayEquals(new double[2], rows.im[0]);
    assertNotSame(rows, pool.take(1));
  }

  @Test
  void rowsOfANumberThatNobodyAskedForAreKept() {
    var rows = new ComplexRows(1, 2);
    pool.give(rows);
    assertSame(rows, pool.copy(new ComplexRows(1, 2)));
    assertArrayEquals(new double[2], pool.copy(new ComplexRows(5, 2)).re[4]);
  }

  @Test
  void aCopyHasTheNumbersAndRowsOfItsOwn() {
    ComplexRows original = used();
    ComplexRows idle = used();
    pool.give(idle);
    ComplexRows again = pool.copy(original);
    assertSame(idle, again);
    ComplexRows made = pool.copy(original);
    assertNotSame(original, made);
    for (ComplexRows copy : new ComplexRows[] {again, made}) {
      assertArrayEquals(new double[] {1, 3}, copy.re[0]);
      assertArrayEquals(new double[] {2, 4}, copy.im[0]);
    }
  }
}
