package rungbook.cli.cache;

import java.util.Optional;
import rungbook.proof.coverage.TreeFindings;
import rungbook.source.ProblemList;

/**
 * What a run says of one tree that it was to prove.
 *
 * @param printed its proof in the format of the run; empty if it was not proved
 * @param system the id of its system, if it names one
 * @param covered what it adds to the coverage of the library
 */
public record ProvedTree(Optional<String> printed, ProblemList found, Optional<String> system,
    Optional<TreeFindings> covered) {}
