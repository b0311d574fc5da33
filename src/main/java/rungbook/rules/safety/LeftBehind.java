package rungbook.rules.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Way;

/**
 * Something is not put back: at an end, at a finding that nothing follows, after its own lines, or on a way to another
 * tree. A finding that evacuates the building is exempt.
 */
public final class LeftBehind extends StateRule {

  static final Code LEFT_BYPASSED = Code.of("left-bypassed");
  static final Code LEFT_DISCONNECTED = Code.of("left-disconnected");
  static final Code LEFT_OFF = Code.of("left-off");
  static final Code LEFT_OPEN = Code.of("left-open");

  /** A safety switch is left defeated: 29 CFR 1910.333(c)(10). */
  public static final LeftBehind BYPASSED = new LeftBehind(LEFT_BYPASSED, Fact.BYPASSED, Fact.BYPASSED);

  /** At the end power is on, or tagged out. */
  public static final LeftBehind OFF = new LeftBehind(LEFT_OFF, Fact.OFF_UNTAGGED, Fact.ISOLATED);

  /** A wire may stay disconnected only if its power stays off, with a tag. */
  public static final LeftBehind DISCONNECTED = new LeftBehind(LEFT_DISCONNECTED, Fact.DISCONNECTED, Fact.DISCONNECTED);

  /**
   * A door or cover must be closed at the end, or guarded by a person. A tag is no guard: the line side of a switch
   * that is off stays live. 29 CFR 1910.303(g)(2), from memory.
   */
  public static final LeftBehind OPEN = new LeftBehind(LEFT_OPEN, Fact.OPEN, Fact.OPEN);

  private final Code code;
  private final Fact atEnd;
  private final Fact onWayOut;

  /**
   * @param atEnd what may not hold at an end
   * @param onWayOut what may not hold on a way to another tree, which starts with untouched equipment
   */
  private LeftBehind(Code code, Fact atEnd, Fact onWayOut) {
    this.code = code;
    this.atEnd = atEnd;
    this.onWayOut = onWayOut;
  }

  @Override
  public List<Code> codes() {
    return List.of(code);
  }

  @Override
  protected boolean concerns(RuleContext context) {
    return context.state().facts().any(atEnd);
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    boolean evacuates = step instanceof Step.Finding finding && finding.evacuate();
    return !evacuates && (step.isLast() || leadsOut(step));
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    point.finish();
    if (step.isLast()) {
      inspectEnd(step, context.state(), point, out);
    } else {
      inspectWaysOut(step, context.state(), point, out);
    }
  }

  private static boolean leadsOut(Step step) {
    for (Way way : step.ways()) {
      if (way.target() instanceof Target.ToTree) {
        return true;
      }
    }
    return false;
  }

  private void inspectEnd(Step end, PathFacts state, PathFacts.ProgramPoint point, Problems out) {
    boolean excused = atEnd == Fact.DISCONNECTED && point.must(state.facts().of(Fact.TAGGED_OUT));
    if (!excused) {
      report(atEnd, end, end.header().titleSpan(), "", state, point, out);
    }
  }

  private void inspectWaysOut(Step step, PathFacts state, PathFacts.ProgramPoint point, Problems out) {
    for (Way way : step.ways()) {
      if (way.target() instanceof Target.ToTree) {
        report(onWayOut, step, way.span(), way.written(), state, point, out);
      }
    }
  }

  private void report(Fact kind, Step step, Span span, String answer, PathFacts state, PathFacts.ProgramPoint point,
      Problems out) {
    List<Integer> left = new ArrayList<>();
    for (int next = point.nextMay(kind, 0); next != FactTable.NONE; next = point.nextMay(kind, next + 1)) {
      if (kind != Fact.OPEN || !isGuarded(state.facts().words(next), step)) {
        left.add(next);
      }
    }
    if (!left.isEmpty()) {
      Problem problem = Problem.at(code, step.source(), span).with("things",
          left.stream().map(state.facts()::words).collect(Collectors.joining(", ")));
      out.add(problem.shownBy(point.showHolding(left.get(0), answer)));
    }
  }

  private static boolean isGuarded(String panel, Step step) {
    return step.guarded().stream().anyMatch(guarded -> guarded.key().equals(panel));
  }
}
