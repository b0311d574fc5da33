package rungbook.system;

/**
 * Limits of a Class 2 source that is not inherently limited, over 20 V to 30 V: IEC 60950-1 Tables 2B and 2C,
 * NEC Chapter 9 Table 11(A) from memory; UL 1585 for the volts.
 */
public final class Class2 {

  /** Rms, loaded or open. */
  public static final double MOST_VOLTS = 30;

  /** What a nameplate may say. */
  public static final double MOST_VOLT_AMPS = 100;

  private Class2() {}

  /** The largest overcurrent protection, amps. */
  public static double mostFuseAmps(double volts) {
    return 100 / volts;
  }
}
