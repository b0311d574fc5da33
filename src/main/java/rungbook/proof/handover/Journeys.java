package rungbook.proof.handover;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungbook.proof.propagation.ArrivalTable;
import rungbook.source.Witness;
import rungbook.tree.Target;
import rungbook.tree.Tree;

/**
 * Where every case ends, through all trees that take over.
 *
 * @param arrivals at the ends of the tree itself and of those that take over
 * @param circles what comes back to where it was
 * @param lost what goes to a tree that cannot be followed
 * @param checks by case, in all trees together
 * @param minutes by case, walking included
 */
public record Journeys(List<Arrival> arrivals, List<Circle> circles, List<Lost> lost, double[] checks,
    double[] minutes) {

  public Journeys {
    arrivals = List.copyOf(arrivals);
    circles = List.copyOf(circles);
    lost = List.copyOf(lost);
  }

  /**
   * What ends in a tree.
   *
   * @param through the tree to which the first one handed it; empty if it ends in the first
   */
  public record Arrival(Optional<Target.ToTree> through, Tree tree, ArrivalTable.Arrivals arrivals) {}

  /**
   * What is handed to a tree that has had it before.
   *
   * @param leg the last tree
   * @param shares by case
   * @param samples by case, the one that shows it best; −1 for a case that does not come back
   */
  public record Circle(Leg leg, Target.ToTree back, double[] shares, int[] samples) {

    /** The ids of the trees, the one to which it comes back at the end. */
    public List<String> trees() {
      return Stream.concat(leg.all().stream().map(one -> one.tree().id()),
          Stream.of(back.tree())).toList();
    }

    /** How the first tree hands it on. */
    public Target.ToTree through() {
      List<Leg> legs = leg.all();
      return legs.size() > 1 ? legs.get(1).entry() : back;
    }

    public Optional<Witness.Path> path(int caseNumber) {
      return leg.pathTo(back, caseNumber, samples[caseNumber]);
    }
  }

  /**
   * What goes to a tree that is not there, is for another system, cannot be proved, or is too far away.
   *
   * @param shares by case
   */
  public record Lost(Target.ToTree through, Target.ToTree other, double[] shares) {}
}
