package rungbook.proof.plan;

import java.util.Arrays;
import java.util.List;

/**
 * The numbers of the samples of several sets of installations that are put together: the drawn ones of each, then the
 * corners of each.
 */
final class MixedSamples {

  private final List<Installations> sets;
  private final int[] firstDrawn;
  private final int[] firstCorner;
  private final int[] setOf;
  private final int drawn;

  MixedSamples(List<Installations> sets) {
    this.sets = sets;
    firstDrawn = new int[sets.size()];
    firstCorner = new int[sets.size()];
    int next = 0;
    for (int set = 0; set < firstDrawn.length; set++) {
      firstDrawn[set] = next;
      next += sets.get(set).drawn();
    }
    drawn = next;
    for (int set = 0; set < firstCorner.length; set++) {
      firstCorner[set] = next;
      next += sets.get(set).samples() - sets.get(set).drawn();
    }
    setOf = new int[next];
    for (int set = 0; set < firstCorner.length; set++) {
      Arrays.fill(setOf, firstDrawn[set], firstDrawn[set] + sets.get(set).drawn(), set);
      Arrays.fill(setOf, firstCorner[set], firstCorner[set] + corners(set), set);
    }
  }

  private int corners(int set) {
    return sets.get(set).samples() - sets.get(set).drawn();
  }

  int size() {
    return setOf.length;
  }

  int drawn() {
    return drawn;
  }

  /** The set that a sample is of. */
  int set(int sample) {
    return setOf[sample];
  }

  /** The number of a sample in its own set. */
  int local(int sample) {
    int set = setOf[sample];
    return sample < drawn ? sample - firstDrawn[set] : sample - firstCorner[set] + sets.get(set).drawn();
  }

  /**
   * Puts the values of one set in their places.
   *
   * @param own an array, one value for each sample of the set
   * @param into an array of the same type, one value for each sample
   */
  @SuppressWarnings("SuspiciousSystemArraycopy") // both are arrays of one primitive type
  void copy(int set, Object own, Object into) {
    int ownDrawn = sets.get(set).drawn();
    System.arraycopy(own, 0, into, firstDrawn[set], ownDrawn);
    System.arraycopy(own, ownDrawn, into, firstCorner[set], corners(set));
  }
}
