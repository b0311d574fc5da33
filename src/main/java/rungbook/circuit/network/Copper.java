package rungbook.circuit.network;

/** Resistance of copper conductors from gauge, length and temperature. */
public final class Copper {

  /** Ω·m at 20 °C, IEC 60028. */
  static final double OHM_METERS_AT_20_C = 0.017241e-6;

  /** Per kelvin at 20 °C, IEC 60028. */
  static final double PER_KELVIN = 0.00393;

  static final double METERS_PER_FOOT = 0.3048;
  private static final double METERS_PER_INCH = 0.0254;

  private Copper() {}

  /** Diameter of a solid conductor in meters: 0.005 in · 92^((36 − n)/39), ASTM B258. */
  public static double diameterMeters(int awg) {
    return 0.005 * METERS_PER_INCH * Math.pow(92, (36.0 - awg) / 39);
  }

  /** Cross-section in square meters. */
  public static double areaSquareMeters(int awg) {
    double d = diameterMeters(awg);
    return Math.PI * d * d / 4;
  }

  /** Resistance of one solid conductor, ohms. */
  public static double ohms(int awg, double feet, double celsius) {
    return ohms(areaSquareMeters(awg), feet * METERS_PER_FOOT, celsius, OHM_METERS_AT_20_C);
  }

  static double ohms(double squareMeters, double meters, double celsius, double ohmMetersAt20C) {
    return ohmMetersAt20C * meters / squareMeters * (1 + PER_KELVIN * (celsius - 20));
  }
}
