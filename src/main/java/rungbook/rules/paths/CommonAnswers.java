package rungbook.rules.paths;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungbook.tree.Meter;
import rungbook.tree.Readings;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** What each answer of a check says about the questions that several steps of several trees ask. */
final class CommonAnswers {

  /**
   * A question that a check asks, with what each way on says about it.
   *
   * @param taken by way, the pieces of the question's domain that take it
   */
  record Asked(String question, long[] taken) {}

  private record Asking(Tree tree, int step, int thing) {
    Step.Check check() {
      return (Step.Check) tree.steps().get(step);
    }
  }

  private final Map<String, Map<Integer, List<Asked>>> byTree = new HashMap<>();

  private CommonAnswers() {}

  /** @param back the steps that a path may pass: a question that only others ask decides nothing */
  static CommonAnswers of(Collection<Tree> trees, WayBack back) {
    Map<String, List<Asking>> askings = new LinkedHashMap<>();
    trees.forEach(tree -> gather(tree, askings));
    CommonAnswers answers = new CommonAnswers();
    askings.forEach((question, asking) -> {
      if (asking.size() > 1 && asking.stream().anyMatch(one -> back.leadsFrom(one.tree(), one.step()))) {
        answers.add(question, asking);
      }
    });
    return answers;
  }

  /** The questions of a step that another step asks too. */
  List<Asked> at(Tree tree, int step) {
    return byTree.getOrDefault(tree.id(), Map.of()).getOrDefault(step, List.of());
  }

  private static void gather(Tree tree, Map<String, List<Asking>> askings) {
    for (int step = 0; step < tree.steps().size(); step++) {
      if (tree.steps().get(step) instanceof Step.Check check) {
        List<String> asked = Question.acrossTrees(check, tree);
        for (int thing = 0; thing < asked.size(); thing++) {
          askings.computeIfAbsent(asked.get(thing), any -> new ArrayList<>()).add(new Asking(tree, step, thing));
        }
      }
    }
  }

  private void add(String question, List<Asking> askings) {
    domain(askings).filter(Domain::canBeFollowed).ifPresent(domain -> {
      for (int i = 0; i < askings.size(); i++) {
        byTree.computeIfAbsent(askings.get(i).tree().id(), any -> new HashMap<>())
            .computeIfAbsent(askings.get(i).step(), any -> new ArrayList<>(1))
            .add(new Asked(question, domain.taken().get(i)));
      }
    });
  }

  private static Optional<Domain> domain(List<Asking> askings) {
    if (!(askings.get(0).check() instanceof Step.MeterCheck first)) {
      return Optional.of(WordDomain
          .of(askings.stream().map(one -> new WordDomain.Asked(one.check(), one.thing())).toList()));
    }
    Optional<Meter.Scale> scale = askings.get(0).tree().meter().scale(first.quantity());
    List<Step.MeterCheck> checks = askings.stream().map(one -> (Step.MeterCheck) one.check()).toList();
    return scale.map(known -> ReadingDomain.of(checks, checks.stream().map(one -> Readings.of(one, known)).toList()));
  }
}
