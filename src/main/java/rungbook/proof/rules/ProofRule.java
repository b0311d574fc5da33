package rungbook.proof.rules;

import java.util.List;
import rungbook.source.Code;
import rungbook.source.Problems;

/** One thing that a proof may show to be wrong with it. */
interface ProofRule {

  /** What it may report. */
  List<Code> codes();

  void inspect(ProofRuleContext context, Problems out);
}
