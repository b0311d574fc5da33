package rungbook.proof.rules;

import java.util.ArrayList;
import java.util.List;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.accounting.Share;
import rungbook.rules.flow.HealthyEnds;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;
import rungbook.tree.Way;

/** An answer that faults give and no healthy system gives leads to something else than {@code healthy: yes}. */
public final class FaultCalledHealthy implements ProofRule {

  public static final Code FAULT_CALLED_HEALTHY = Code.of("fault-called-healthy");

  @Override
  public List<Code> codes() {
    return List.of(FAULT_CALLED_HEALTHY);
  }

  @Override
  public void inspect(ProofRuleContext context, Problems out) {
    if (context.tree().steps().stream().noneMatch(HealthyEnds::isHealthy)) {
      return;
    }
    HealthyEnds ends = HealthyEnds.of(context.tree());
    for (int step = 0; step < context.tree().steps().size(); step++) {
      if (context.step(step) instanceof Step.Check check && context.propagation().flow().reached(step)) {
        for (int way = 0; way < check.ways().size(); way++) {
          if (ends.isCertain(check.ways().get(way).target())) {
            inspect(step, way, check, context, out);
          }
        }
      }
    }
  }

  private static void inspect(int step, int way, Step.Check check, ProofRuleContext context, Problems out) {
    if (context.propagation().flow().taken(step, way, 0) > Share.ROUNDING) {
      return;
    }
    List<String> faults = new ArrayList<>();
    for (int i = 1; i < context.names().size(); i++) {
      double share = context.propagation().flow().taken(step, way, i);
      if (Share.isReported(share)) {
        faults.add(context.names().get(i) + " (" + ReportNumbers.percent(share) + ")");
      }
    }
    if (!faults.isEmpty()) {
      Way answer = check.ways().get(way);
      out.add(Problem.at(FAULT_CALLED_HEALTHY, check.source(), answer.span()).with("answer", answer.written())
          .with("faults", String.join(", ", faults)));
    }
  }
}
