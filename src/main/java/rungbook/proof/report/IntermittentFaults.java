package rungbook.proof.report;

import java.util.List;
import java.util.Optional;
import rungbook.proof.accounting.Share;
import rungbook.source.Witness;

/**
 * Where faults end that come and go: each single fault, gone from some check on its way on, where each check counts
 * alike.
 *
 * @param all over the faults that give the complaint, by likelihood
 * @param faults in the order of the system
 * @param wrongParts the likeliest ways to a finding that names only others, the likeliest first
 * @param excluded the findings that good readings alone lead to, in the order of the text
 */
public record IntermittentFaults(EndShares all, List<Fault> faults, List<WrongPart> wrongParts,
    List<Excluded> excluded) {

  public IntermittentFaults {
    faults = List.copyOf(faults);
    wrongParts = List.copyOf(wrongParts);
    excluded = List.copyOf(excluded);
  }

  public record Fault(String name, double likelihood, EndShares ends) {}

  /**
   * @param title of the finding
   * @param likelihood the share of all likelihood that ends there
   * @param path of one installation; the fault is gone from the step {@code goneFrom} on
   */
  public record WrongPart(String fault, String title, double likelihood, String goneFrom, Witness.Path path) {}

  /**
   * A finding that is reached by exclusion: a fault that goes elsewhere gives every abnormal answer on the way too, and
   * only good readings have set it aside.
   *
   * @param finding its step
   * @param share of what the finding names and that arrives there
   */
  public record Excluded(int finding, double share) {

    /** {@code by exclusion alone}, or how much of it. */
    public String words(String percent) {
      return Share.isAll(share) ? "by exclusion alone" : "by exclusion in " + percent;
    }
  }

  public Optional<Excluded> excluded(int finding) {
    return excluded.stream().filter(one -> one.finding() == finding).findFirst();
  }
}
