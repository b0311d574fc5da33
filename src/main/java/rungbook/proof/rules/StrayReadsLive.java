package rungbook.proof.rules;

import java.util.List;
import rungbook.proof.accounting.CheckTally;
import rungbook.proof.accounting.Extreme;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Meter;

/** A voltage that is only stray is not read as a live one. */
public final class StrayReadsLive implements ProofRule {

  public static final Code STRAY_READS_LIVE = Code.of("stray-reads-live");

  @Override
  public List<Code> codes() {
    return List.of(STRAY_READS_LIVE);
  }

  @Override
  public void inspect(ProofRuleContext context, Problems out) {
    for (CheckTally tally : context.propagation().tallies().values()) {
      if (!tally.strays().isEmpty()) {
        CheckTally.Stray stray = tally.strays().get(0);
        Extreme extreme = stray.seen();
        Meter.Scale scale = context.tree().meter().scale(tally.check().quantity()).orElseThrow();
        Problem problem = Problem.at(STRAY_READS_LIVE, tally.check().source(), tally.check().quantitySpan())
            .with("fault", context.names().get(extreme.caseNumber()))
            .with("reading", ReportNumbers.reading(extreme.reading(), scale.digit(), tally.check().quantity()))
            .with("low", ReportNumbers.reading(stray.lowImpedance(), scale.digit(), tally.check().quantity()));
        out.add(problem.shownBy(context.wayTo(tally.step(), extreme.caseNumber(), extreme.sample())));
      }
    }
  }
}
