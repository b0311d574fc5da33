package rungbook.circuit.solver;

/**
 * What a branch is in one relay state and one state of the equipment, as a byte. The bytes of all branches, together
 * with a fault, determine the network.
 */
public final class BranchMode {

  public static final byte ABSENT = 0;
  /** De-energized, or a closed contact. */
  public static final byte CLOSED = 1;
  /** A load that has pulled in. */
  public static final byte ON = 2;

  /** Resistance of a jumper with its two clips (common practice, no source). */
  public static final double JUMPER_OHMS = 0.02;

  private static final byte CONDUCTION = 3;
  private static final byte JUMPERED = 4;
  private static final byte DISCONNECTED = 8;

  private BranchMode() {}

  /**
   * The mode of a branch with what the technician has done to it.
   *
   * @param conduction absent, closed or on
   */
  public static byte with(byte conduction, boolean isJumpered, boolean isDisconnected) {
    return (byte) ((isDisconnected ? DISCONNECTED : conduction) | (isJumpered ? JUMPERED : 0));
  }

  /** Absent, closed or on. */
  public static byte conduction(byte mode) {
    return (byte) (mode & CONDUCTION);
  }

  static boolean isJumpered(byte mode) {
    return (mode & JUMPERED) != 0;
  }

  static boolean isDisconnected(byte mode) {
    return (mode & DISCONNECTED) != 0;
  }
}
