package rungbook.proof.propagation;

import java.util.List;
import java.util.Map;
import rungbook.proof.accounting.CheckTally;
import rungbook.proof.plan.Situation;
import rungbook.tree.Target;

/**
 * Where every case and sample went in a tree, and what was read on the way. Steps are indexes in the tree.
 *
 * @param ends in the order in which they were first reached
 * @param tallies by step, of the checks with a meter that the circuit models, in the order in which they were reached
 * @param unmodeled by step, titles of the checks that the circuit does not model, or not in every situation
 * @param repairs what follows each finding that leads on, in the order of the steps
 * @param situations by step, those in which it is reached
 * @param handedOn by where it goes, what other trees take over
 */
public record PropagationResult(CaseFlow flow, List<ArrivalTable.Arrivals> ends, Map<Integer, CheckTally> tallies,
    Map<Integer, String> unmodeled, List<RepairRuns> repairs, Map<Integer, List<Situation>> situations,
    PossibleAnswers possibleAnswers, Map<Target.ToTree, Arriving> handedOn) {}
