package rungbook.rules.cautions;

import java.util.List;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;

/** A step names the caution {@code lockout}, and on some path no power source is off, before it or in it. */
public final class NothingLockedOut extends StateRule {

  static final Code NOTHING_LOCKED_OUT = Code.of("nothing-locked-out");

  private static final String CAUTION = "lockout";

  @Override
  public List<Code> codes() {
    return List.of(NOTHING_LOCKED_OUT);
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return LineVoltageUnsaid.warns(step, CAUTION);
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    boolean off = point.isPowerOff();
    for (int action = 0; action < step.actions().size() && !off; action++) {
      point.pass();
      off = point.isPowerOff();
    }
    if (!off) {
      out.add(Problem.at(NOTHING_LOCKED_OUT, step.source(), step.header().cautions().stream()
          .filter(caution -> caution.key().equals(CAUTION)).findFirst().orElseThrow().span())
          .shownBy(point.showLacking(context.state().facts().of(Fact.POWER_OFF), "")));
    }
  }
}
