package rungbook.proof.advice;

import java.util.List;
import rungbook.proof.report.Proof;
import rungbook.source.Problem;
import rungbook.tree.Step;

/** One thing to do about a tree, with what shows that it is needed. */
public sealed interface Recommendation {

  /** The problem that it removes. */
  Problem problem();

  /** A limit has a better place; {@code limit.better()} is there. */
  record MoveLimit(Problem problem, Step.MeterCheck check, Proof.Limit limit, Example example)
      implements Recommendation {}

  /** No place of a limit tells the two sides apart. */
  record CheckAnotherWay(Problem problem, Step.MeterCheck check, Proof.Limit limit, Example example)
      implements Recommendation {}

  /** A good unit ends at a finding that names a fault. */
  record ClearGoodUnits(Problem problem, Proof.FalseAlarm alarm) implements Recommendation {}

  /**
   * A named fault never gets to a finding that names it.
   *
   * @param instead where it ends, each in words
   */
  record FindFault(Problem problem, Proof.Outcome fault, List<String> instead) implements Recommendation {}

  /** Anything else that the proof shows wrong: its page says what to do. */
  record Correct(Problem problem) implements Recommendation {}

  /**
   * One installation that a limit sends the wrong way.
   *
   * @param reading as the display shows it, with its unit
   * @param taken the answer that takes it
   * @param sentTo the title of the step or tree that the answer leads to
   */
  record Example(Proof.Misrouted misrouted, String reading, String taken, String sentTo) {}
}
