package rungbook.proof.propagation;

import java.util.Set;

/**
 * What becomes of the faults that a finding names and that arrive there, by case. Shares are of the drawn samples of
 * the case.
 *
 * @param repaired what is repaired on the way to an end
 * @param proved what of that ends "repaired and proved"
 * @param left what of it ends so although a fault of the case is still there
 * @param elsewhere the step where most of a case ends that is repaired and not proved; −1 if none does
 * @param unmodeled titles of the checks on the way that the circuit does not model
 */
public record RepairArrivals(double[] repaired, double[] proved, double[] left, int[] elsewhere,
    Set<String> unmodeled) {}
