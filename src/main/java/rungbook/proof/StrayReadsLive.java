package rungbook.proof;

import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Meter;

/** A voltage that is only stray is not read as a live one. */
final class StrayReadsLive implements ProofRule {

  @Override
  public void inspect(Inspection seen, Problems out) {
    for (CheckTally tally : seen.walker().checks) {
      if (!tally.strays.isEmpty()) {
        CheckTally.Stray stray = tally.strays.get(0);
        Extreme extreme = stray.seen();
        Meter.Scale scale = seen.tree().meter().scale(tally.check.quantity()).orElseThrow();
        Problem problem = Problem.at("stray-reads-live", tally.check.source(), tally.check.quantitySpan())
            .with("fault", seen.names().get(extreme.caseNumber()))
            .with("reading", Shown.reading(extreme.reading(), scale.digit(), tally.check.quantity()))
            .with("low", Shown.reading(stray.lowImpedance(), scale.digit(), tally.check.quantity()));
        out.add(Inspection.shown(problem,
            seen.wayTo(tally.step, extreme.caseNumber(), extreme.sample())));
      }
    }
  }
}
