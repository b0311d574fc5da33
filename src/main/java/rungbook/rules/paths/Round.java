package rungbook.rules.paths;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * A step on the way round through several trees.
 *
 * @param before the step before; null at the start
 * @param way the way on that was taken there
 * @param equipment before the step's actions
 * @param out the number of the way on by which the path last left the first tree; {@link #NOT_OUT} before that
 * @param passed the keys of the steps passed, as far as another tree leads to them
 */
record Round(
    @Nullable Round before, int way, Tree tree, int step, Equipment equipment, Known known, int out,
    Set<String> passed) {

  static final int NOT_OUT = -1;

  /**
   * A way on taken from a step.
   *
   * @param equipment after the step's actions
   * @param known after its answer
   */
  record Taken(Round from, int way, Equipment equipment, Known known) {}

  /** What decides how a path goes on from a step. */
  record Place(String tree, int step, Equipment equipment, Known known, int out, Set<String> passed) {}

  Round(Taken taken, Tree tree, int step, int out, Set<String> passed) {
    this(taken.from(), taken.way(), tree, step, taken.equipment(), taken.known(), out, passed);
  }

  static Round start(Tree tree, Equipment equipment) {
    return new Round(null, 0, tree, 0, equipment, Known.NOTHING, NOT_OUT, Set.of(key(tree, 0)));
  }

  /** What names a step among those of several trees. */
  static String key(Tree tree, int step) {
    return tree.id() + '#' + step;
  }

  Step here() {
    return tree.steps().get(step);
  }

  Place place() {
    return new Place(tree.id(), step, equipment, known, out, passed);
  }

  /** The number of a way on of this step among those of its tree. */
  int number(int taken) {
    return step * Step.MOST_ANSWERS + taken;
  }

  /** What is known once a way is taken; null if it contradicts an earlier answer to the same question. */
  @Nullable
  Known after(int taken, CommonAnswers answers) {
    Known now = AvailableAnswers.isProseAlone(here()) ? Known.NOTHING : known;
    for (CommonAnswers.Asked asked : answers.at(tree, step)) {
      long possible = now.among(asked.taken()[taken], asked.question(), equipment);
      if (possible == 0) {
        return null;
      }
      now = now.with(asked.question(), equipment, possible);
    }
    return now;
  }
}
