package rungbook.system.reader;

/**
 * Limits of a Class 2 source that is not inherently limited, over 20 V to 30 V: IEC 60950-1 Tables 2B and 2C,
 * NEC Chapter 9 Table 11(A) from memory; UL 1585 for the volts.
 */
final class Class2 {

  /** Rms, loaded or open. */
  static final double MOST_VOLTS = 30;

  /** What a nameplate may say. */
  static final double MOST_VOLT_AMPS = 100;

  private Class2() {}

  /** The largest overcurrent protection, amps. */
  static double mostFuseAmps(double volts) {
    return 100 / volts;
  }
}
