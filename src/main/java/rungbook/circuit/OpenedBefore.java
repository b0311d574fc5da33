package rungbook.circuit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** What each case has opened in each sample of a block before the technician arrives, of all that stays open. */
final class OpenedBefore {

  private final boolean[][][] open;

  /** @param parts how many stay open once they have opened */
  OpenedBefore(int cases, int samples, int parts) {
    open = new boolean[cases][samples][];
    boolean[] none = new boolean[parts];
    for (boolean[][] ofCase : open) {
      Arrays.fill(ofCase, none);
    }
  }

  boolean[] of(int caseNumber, int sample) {
    return open[caseNumber][sample];
  }

  void note(int caseNumber, int[] samples, boolean[] opened) {
    if (any(opened)) {
      Arrays.stream(samples).forEach(sample -> open[caseNumber][sample] = opened);
    }
  }

  /** The samples in which a case has opened nothing. */
  int[] without(int caseNumber) {
    return IntStream.range(0, open[caseNumber].length).filter(sample -> !any(open[caseNumber][sample])).toArray();
  }

  /** The samples in which a case has opened the same, group by group. */
  List<int[]> alike(int caseNumber) {
    var groups = new ArrayList<int[]>();
    int[] rest = IntStream.range(0, open[caseNumber].length).toArray();
    while (rest.length > 0) {
      boolean[] first = of(caseNumber, rest[0]);
      groups.add(Arrays.stream(rest).filter(sample -> Arrays.equals(of(caseNumber, sample), first)).toArray());
      rest = Arrays.stream(rest).filter(sample -> !Arrays.equals(of(caseNumber, sample), first)).toArray();
    }
    return groups;
  }

  private static boolean any(boolean[] opened) {
    for (boolean one : opened) {
      if (one) {
        return true;
      }
    }
    return false;
  }
}
