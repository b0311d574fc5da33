package rungbook.circuit.network;

/** Resistance of copper conductors from gauge, length and temperature. */
public final class Copper {

  /** Ω·m at 20 °C, IEC 60028. */
  static final double OHM_METRES_AT_20_C = 0.017241e-6;

  /** Per kelvin at 20 °C, IEC 60028. */
  static final double PER_KELVIN = 0.00393;

  static final double METRES_PER_FOOT = 0.3048;
  private static final double METRES_PER_INCH = 0.0254;

  private Copper() {}

  /** Diameter of a solid conductor in metres: 0.005 in · 92^((36 − n)/39), ASTM B258. */
  public static double diameterMetres(int awg) {
    return 0.005 * METRES_PER_INCH * Math.pow(92, (36.0 - awg) / 39);
  }

  /** Cross-section in square metres. */
  public static double areaSquareMetres(int awg) {
    double d = diameterMetres(awg);
    return Math.PI * d * d / 4;
  }

  /** Ohms of one solid conductor. */
  public static double ohms(int awg, double feet, double celsius) {
    return ohms(areaSquareMetres(awg), feet * METRES_PER_FOOT, celsius, OHM_METRES_AT_20_C);
  }

  static double ohms(double squareMetres, double metres, double celsius, double ohmMetresAt20C) {
    return ohmMetresAt20C * metres / squareMetres * (1 + PER_KELVIN * (celsius - 20));
  }
}
