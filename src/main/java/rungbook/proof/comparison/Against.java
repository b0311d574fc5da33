package rungbook.proof.comparison;

import java.util.Optional;

/**
 * What a proof is compared with.
 *
 * @param name of the earlier text, in words
 * @param found empty if it cannot be compared
 * @param why it cannot; empty if it is
 */
public record Against(String name, Optional<ProofComparison> found, String why) {

  public static Against of(String name, ProofComparison found) {
    return new Against(name, Optional.of(found), "");
  }

  public static Against not(String name, String why) {
    return new Against(name, Optional.empty(), why);
  }
}
