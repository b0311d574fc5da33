package rungbook.rules.safety;

import java.util.List;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Action;
import rungbook.tree.Step;

/** A circuit is proved dead although, on some path, the power is not isolated. */
public final class ProvedBeforeIsolating extends DeadProofRule {

  static final Code PROVED_BEFORE_ISOLATING = Code.of("proved-before-isolating");

  @Override
  public List<Code> codes() {
    return List.of(PROVED_BEFORE_ISOLATING);
  }

  @Override
  protected void inspect(Action proof, Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    if (!point.isPowerOff()) {
      out.add(Problem.at(PROVED_BEFORE_ISOLATING, step.source(), proof.thing().span())
          .shownBy(point.showLacking(context.state().facts().of(Fact.POWER_OFF), "")));
    }
  }
}
