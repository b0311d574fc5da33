package rungbook.proof.plan;

/** Installations whose solved states can be kept, and restored where the same system is built again. */
public interface Restorable {

  /** Whether something was solved that was not restored. */
  boolean isChanged();

  /** All that was solved and restored, as bytes. */
  byte[] archive();

  /**
   * Takes over what the same installations of the same system have solved, in the same build of the program. Bytes that
   * are something else are left alone.
   */
  void restore(byte[] archive);
}
