package rungbook.rules.safety;

import java.util.List;
import rungbook.rules.Rule;
import rungbook.rules.Subject;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.Facts;
import rungbook.rules.flow.State;
import rungbook.rules.state.Sources;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Deed;
import rungbook.tree.Step;
import rungbook.tree.Tree;
import rungbook.tree.Verb;

/**
 * A part is touched before the power is isolated, before it is proved dead, or before its charge is gone; the first of these
 * that is missing on some path is reported. To switch power on cancels all three.
 */
public final class DeadWork implements Rule {

  @Override
  public void inspect(Subject subject, Problems out) {
    State state = subject.state();
    State.Moment moment = state.moment();
    for (int step : state.order()) {
      List<Deed> deeds = state.step(step).deeds();
      if (!deeds.isEmpty()) {
        moment.enter(step);
        for (Deed deed : deeds) {
          inspect(deed, step, subject.tree(), state, moment, out);
          moment.pass();
        }
      }
    }
  }

  private static void inspect(Deed deed, int at, Tree tree, State state, State.Moment moment, Problems out) {
    if (!deed.verb().touches() && deed.verb() != Verb.DISCHARGE) {
      return;
    }
    Facts facts = state.facts();
    Step step = state.step(at);
    String key = deed.thing().key();
    int proved = proved(step, tree, facts);
    if (!moment.isPowerOff()) {
      report("touched-live", deed, step, facts.of(Fact.POWER_OFF), moment, out);
    } else if (deed.verb().touches() && !moment.must(proved)) {
      report("not-proved-dead", deed, step, proved, moment, out);
    } else if (deed.verb().touches() && facts.isCapacitor(key) && !moment.must(facts.of(Fact.DISCHARGED, key))) {
      report("capacitor-charged", deed, step, facts.of(Fact.DISCHARGED, key), moment, out);
    }
  }

  /** Where line voltage can be met the proof belongs to that very place; where only control voltage is, one anywhere will do. */
  private static int proved(Step step, Tree tree, Facts facts) {
    boolean here = tree.system().isPresent() && Sources.hasLineVoltage(tree.system().get(), Facts.place(step));
    return here ? facts.of(Fact.PROVED_AT, Facts.place(step)) : facts.of(Fact.PROVED_ANYWHERE);
  }

  private static void report(String code, Deed deed, Step step, int lacking, State.Moment moment, Problems out) {
    Problem problem = Problem.at(code, step.source(), deed.thing().span()).with("thing", deed.thing().text());
    out.add(moment.showLacking(lacking, "").map(problem::shownBy).orElse(problem));
  }
}
