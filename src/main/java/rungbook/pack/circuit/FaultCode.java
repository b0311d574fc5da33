package rungbook.pack.circuit;

import java.util.Base64;
import java.util.BitSet;

/** Numbers of faults as the script reads them: a bit for each, the lowest first in each byte, as base64. */
final class FaultCode {

  private FaultCode() {}

  static String of(BitSet faults) {
    return Base64.getEncoder().withoutPadding().encodeToString(faults.toByteArray());
  }
}
