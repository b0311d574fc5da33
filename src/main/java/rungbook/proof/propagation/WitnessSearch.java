package rungbook.proof.propagation;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import rungbook.circuit.network.Cancellation;
import rungbook.proof.plan.Situation;
import rungbook.source.Witness;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;

/** Finds the way that one installation with one fault takes through a tree. */
public final class WitnessSearch {

  private final Tree tree;
  private final int first;
  private final Situation start;
  private final PossibleAnswers answers;
  private final int caseNumber;
  private final int sample;
  private final String variant;

  /** @param variant that the sample is of; empty for the base */
  public WitnessSearch(Tree tree, Situation start, PossibleAnswers answers, int caseNumber, int sample,
      String variant) {
    this(tree, 0, start, answers, caseNumber, sample, variant);
  }

  /** @param first the step at which the way begins */
  public WitnessSearch(Tree tree, int first, Situation start, PossibleAnswers answers, int caseNumber, int sample,
      String variant) {
    this.tree = tree;
    this.first = first;
    this.start = start;
    this.answers = answers;
    this.caseNumber = caseNumber;
    this.sample = sample;
    this.variant = variant;
  }

  /**
   * A step on the way.
   *
   * @param answer that led here from the one before, with the reading if there was one
   */
  private record At(int step, Situation situation, @Nullable At before, String answer) {}

  public Optional<Witness.Path> toStep(int step) {
    return find(at -> at.step() == step);
  }

  /**
   * How another tree, or another state of the fault, takes over.
   *
   * @param left the situation in which that happens
   */
  public record HandOver(Witness.Path path, Situation left) {}

  /** The way to a step, and the situation in which it is done. */
  Optional<HandOver> toSituation(int step) {
    return first(at -> at.step() == step).map(at -> new HandOver(path(at, ""), at.situation()));
  }

  /** The way to where another tree takes over. */
  public Optional<HandOver> toTree(Target.ToTree other) {
    Deque<At> waiting = begin();
    Set<Object> seen = new HashSet<>();
    while (!waiting.isEmpty()) {
      Cancellation.check();
      At at = waiting.poll();
      Step step = tree.steps().get(at.step());
      Optional<PossibleAnswers.Given> leaves = answers.of(at.step(), at.situation(), caseNumber, sample).stream()
          .filter(given -> step.ways().get(given.way()).target().equals(other)).findFirst();
      if (leaves.isPresent()) {
        return Optional.of(new HandOver(path(at, leaves.get().answer()), after(at)));
      }
      if (seen.add(List.of(at.step(), at.situation()))) {
        follow(at, waiting);
      }
    }
    return Optional.empty();
  }

  public Optional<Witness.Path> to(End end) {
    return end instanceof End.AtStep at ? toStep(at.step()) : Optional.empty();
  }

  private Deque<At> begin() {
    return new ArrayDeque<>(List.of(new At(first, start.to(tree.steps().get(first)), null, "")));
  }

  private Optional<Witness.Path> find(Predicate<At> wanted) {
    return first(wanted).map(at -> path(at, ""));
  }

  private Optional<At> first(Predicate<At> wanted) {
    Deque<At> waiting = begin();
    Set<Object> seen = new HashSet<>();
    while (!waiting.isEmpty()) {
      Cancellation.check();
      At at = waiting.poll();
      if (wanted.test(at)) {
        return Optional.of(at);
      }
      if (seen.add(List.of(at.step(), at.situation()))) {
        follow(at, waiting);
      }
    }
    return Optional.empty();
  }

  private void follow(At at, Deque<At> waiting) {
    Step step = tree.steps().get(at.step());
    Situation after = after(at);
    for (PossibleAnswers.Given given : answers.of(at.step(), at.situation(), caseNumber, sample)) {
      if (step.ways().get(given.way()).target() instanceof Target.ToStep to) {
        waiting.add(new At(to.step(), after.to(tree.steps().get(to.step())), at, given.answer()));
      }
    }
  }

  private Situation after(At at) {
    return answers.after(at.situation(), at.step(), caseNumber);
  }

  private Witness.Path path(At end, String last) {
    List<Witness.Stop> stops = new ArrayList<>();
    String answer = last;
    for (At at = end; at != null; at = at.before()) {
      Step step = tree.steps().get(at.step());
      stops.add(0, new Witness.Stop(step.title(), step.source(), step.header().titleSpan(), answer));
      answer = at.answer();
    }
    return new Witness.Path(stops, variant);
  }
}
