package rungbook.rules.safety;

import java.util.List;
import rungbook.rules.Rule;
import rungbook.rules.Subject;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.Facts;
import rungbook.rules.flow.State;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.tree.Goal;
import rungbook.tree.Step;
import rungbook.tree.Way;

/**
 * Something is left as the work needed it, not as the house needs it: at a finding, its own repair counted, or on the way out
 * to another tree. A finding that sends people out of the building waits for nothing.
 *
 * @param atFinding what may not hold at a finding
 * @param onWayOut what may not hold on the way to another tree, which begins as if nobody had touched the equipment
 */
public record LeftBehind(String code, Fact atFinding, Fact onWayOut) implements Rule {

  /** A defeated switch stays with the customer: 29 CFR 1910.333(c)(10). */
  public static final LeftBehind BYPASSED = new LeftBehind("left-bypassed", Fact.BYPASSED, Fact.BYPASSED);

  /** Power is on at the end, or tagged out so that nobody wonders. */
  public static final LeftBehind OFF = new LeftBehind("left-off", Fact.OFF_UNTAGGED, Fact.ISOLATED);

  /** A wire may stay off only where its power stays off, with a tag. */
  public static final LeftBehind DISCONNECTED = new LeftBehind("left-disconnected", Fact.DISCONNECTED, Fact.DISCONNECTED);

  /** A door or cover is back on before anybody walks away; tagged out, it may stay off. Common practice, no source. */
  public static final LeftBehind OPEN = new LeftBehind("left-open", Fact.OPEN, Fact.OPEN);

  @Override
  public void inspect(Subject subject, Problems out) {
    State state = subject.state();
    if (!state.facts().any(atFinding)) {
      return;
    }
    State.Moment moment = state.moment();
    for (int step : state.order()) {
      if (state.step(step) instanceof Step.Finding finding) {
        if (!finding.evacuate()) {
          moment.enter(step);
          inspect(finding, state, moment, out);
        }
      } else {
        inspectWaysOut(step, state, moment, out);
      }
    }
  }

  private void inspect(Step.Finding finding, State state, State.Moment moment, Problems out) {
    moment.finish();
    boolean excused = (atFinding == Fact.DISCONNECTED || atFinding == Fact.OPEN) && moment.must(state.facts().of(Fact.TAGGED_OUT));
    if (!excused) {
      report(atFinding, finding, finding.particulars().titleSpan(), "", state, moment, out);
    }
  }

  private void inspectWaysOut(int step, State state, State.Moment moment, Problems out) {
    List<Way> ways = state.step(step).ways();
    for (Way way : ways) {
      if (way.goal() instanceof Goal.ToTree) {
        moment.enter(step);
        moment.finish();
        report(onWayOut, state.step(step), way.span(), way.written(), state, moment, out);
      }
    }
  }

  private void report(Fact kind, Step step, Span span, String answer, State state, State.Moment moment, Problems out) {
    int left = moment.nextMay(kind, 0);
    if (left == Facts.NONE) {
      return;
    }
    StringBuilder things = new StringBuilder(state.facts().words(left));
    for (int next = moment.nextMay(kind, left + 1); next != Facts.NONE; next = moment.nextMay(kind, next + 1)) {
      things.append(", ").append(state.facts().words(next));
    }
    Problem problem = Problem.at(code, step.source(), span).with("things", things);
    out.add(moment.showHolding(left, answer).map(problem::shownBy).orElse(problem));
  }
}
