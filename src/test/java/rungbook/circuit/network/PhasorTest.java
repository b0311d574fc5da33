package rungbook.circuit.network;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Worked by hand; a right triangle of 3, 4 and 5. */
class PhasorTest {

  private static final Phasor A = new Phasor(3, 4);
  private static final Phasor B = new Phasor(2, -5);

  @Test
  void addsSubtractsMultipliesAndDivides() {
    assertEquals(new Phasor(5, -1), A.plus(B));
    assertEquals(new Phasor(1, 9), A.minus(B));
    assertEquals(new Phasor(26, -7), A.times(B));
    assertEquals(new Phasor(6, 8), A.times(2));
    assertEquals(new Phasor(-14 / 29.0, 23 / 29.0), A.over(B));
    assertEquals(new Phasor(3 / 25.0, -4 / 25.0), A.inverse());
  }

  @Test
  void hasAMagnitudeAndAnAngle() {
    assertEquals(5, A.magnitude());
    assertEquals(45, new Phasor(1, 1).degrees(), 1e-12);
    assertEquals(-90, new Phasor(0, -2).degrees(), 1e-12);
    assertEquals(0.5, Phasor.polar(1, 60).re(), 1e-12);
    assertEquals(-Math.sqrt(3), Phasor.polar(2, -60).im(), 1e-12);
  }
}
