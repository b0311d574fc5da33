package rungbook.proof.propagation;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import rungbook.circuit.Probe;
import rungbook.circuit.network.Cancellation;
import rungbook.proof.accounting.CheckTally;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.plan.Situation;
import rungbook.source.Witness;
import rungbook.tree.Meter;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/** Finds the way that one installation with one fault takes through a tree. */
public final class WitnessSearch {

  private final Tree tree;
  private final ProofContext course;
  private final Propagation walker;
  private final int caseNumber;
  private final int sample;
  private final double[] read;

  public WitnessSearch(Tree tree, ProofContext course, Propagation walker, int caseNumber, int sample) {
    this.tree = tree;
    this.course = course;
    this.walker = walker;
    this.caseNumber = caseNumber;
    this.sample = sample;
    read = new double[course.installations().samples()];
  }

  /**
   * A step on the way.
   *
   * @param answer that led here from the one before, with the reading if there was one
   */
  private record At(int step, Situation stand, @Nullable At before, String answer) {}

  /** A way on that may be taken, in words. */
  private record Taken(int way, String answer) {}

  public Optional<Witness.Path> toStep(int step) {
    return find(at -> at.step() == step);
  }

  public Optional<Witness.Path> to(End end) {
    if (end instanceof End.Finding finding) {
      return toStep(finding.step());
    }
    return end instanceof End.Stuck stuck ? toStep(stuck.step()) : Optional.empty();
  }

  private Optional<Witness.Path> find(Predicate<At> wanted) {
    Deque<At> waiting = new ArrayDeque<>(List.of(new At(0, course.start().to(tree.steps().get(0)), null, "")));
    Set<Object> seen = new HashSet<>();
    while (!waiting.isEmpty()) {
      Cancellation.check();
      At at = waiting.poll();
      if (wanted.test(at)) {
        return Optional.of(path(at));
      }
      if (seen.add(List.of(at.step(), at.stand()))) {
        follow(at, waiting);
      }
    }
    return Optional.empty();
  }

  private void follow(At at, Deque<At> waiting) {
    Step step = tree.steps().get(at.step());
    Situation after = at.stand().after(step);
    for (Taken taken : ways(step, at.stand())) {
      Way way = step.ways().get(taken.way());
      if (way.target() instanceof Target.ToStep to) {
        waiting.add(new At(to.step(), after.to(tree.steps().get(to.step())), at, taken.answer()));
      }
    }
  }

  private List<Taken> ways(Step step, Situation stand) {
    if (step instanceof Step.MeterCheck check) {
      Optional<Probe> probe = course.question().probe(check, stand.place());
      Optional<Meter.Scale> scale = tree.meter().scale(check.quantity());
      return probe.isEmpty() || scale.isEmpty()
          ? every(step).stream().filter(taken -> walker.open(step)[taken.way()]).toList()
          : measured(check, probe.get(), scale.get(), stand);
    }
    if (step instanceof Step.SenseCheck check) {
      return seen(check, stand);
    }
    return step.ways().isEmpty() ? List.of() : List.of(new Taken(0, step.ways().get(0).written()));
  }

  private static List<Taken> every(Step step) {
    List<Taken> all = new ArrayList<>();
    for (int way = 0; way < step.ways().size(); way++) {
      all.add(new Taken(way, step.ways().get(way).written()));
    }
    return all;
  }

  private List<Taken> measured(Step.MeterCheck check, Probe probe, Meter.Scale scale, Situation stand) {
    CheckTally tally = Objects.requireNonNull(walker.tallies.get(check));
    walker.moment(stand.state()).readings(caseNumber, probe, read);
    List<Taken> taken = new ArrayList<>();
    for (int way = 0; way < check.ways().size(); way++) {
      if (tally.shares.mayTake(read[sample], way)) {
        taken.add(new Taken(way, check.ways().get(way).written() + " (reads "
            + ReportNumbers.reading(read[sample], scale.digit(), check.quantity()) + ")"));
      }
    }
    return taken;
  }

  private List<Taken> seen(Step.SenseCheck check, Situation stand) {
    SenseSplit shares = new SenseSplit(course.installations(), check, walker.open(check));
    if (course.question().shows(check)) {
      shares.look(walker.moment(stand.state()), caseNumber);
    }
    boolean[] ways = shares.ways(sample);
    return every(check).stream().filter(taken -> ways[taken.way()]).toList();
  }

  private Witness.Path path(At end) {
    List<Witness.Stop> stops = new ArrayList<>();
    String answer = "";
    for (At at = end; at != null; at = at.before()) {
      Step step = tree.steps().get(at.step());
      stops.add(0, new Witness.Stop(step.title(), step.source(), step.header().titleSpan(), answer));
      answer = at.answer();
    }
    return new Witness.Path(stops);
  }
}
