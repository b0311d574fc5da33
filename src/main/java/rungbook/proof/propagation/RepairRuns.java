package rungbook.proof.propagation;

/**
 * What follows a finding that leads on.
 *
 * @param finding its step
 * @param right where a repair takes away the faults of what is repaired
 * @param wrong where no repair takes anything away
 * @param flow of the right repair, after the finding
 */
public record RepairRuns(int finding, RepairArrivals right, RepairArrivals wrong, CaseFlow flow) {}
