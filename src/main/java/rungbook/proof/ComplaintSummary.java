package rungbook.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.Population;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.report.Complaint;
import rungbook.tree.Tree;

/** Adds up which faults show a tree's complaint. */
final class ComplaintSummary {

  private final Tree tree;
  private final ProofContext context;
  private final Population population;
  private final List<String> names;

  /** @param names of the cases, as the system writes them */
  ComplaintSummary(Tree tree, ProofContext context, List<String> names) {
    this.tree = tree;
    this.context = context;
    this.population = context.population();
    this.names = names;
  }

  Complaint complaint() {
    double onComplaint = all(context.installations());
    double inSystem = all(context.system());
    List<Complaint.Shown> faults = IntStream.range(1, names.size()).mapToObj(this::shown).toList();
    return new Complaint(tree.symptoms(), inSystem == 0 ? 0 : onComplaint / inSystem, population.shown(0), faults,
        uncovered(onComplaint));
  }

  private double all(Installations installations) {
    return IntStream.range(1, names.size()).mapToDouble(installations::likelihood).sum();
  }

  private Complaint.Shown shown(int caseNumber) {
    return new Complaint.Shown(names.get(caseNumber), context.system().likelihood(caseNumber),
        population.shown(caseNumber), context.installations().faults(caseNumber).size() > 1);
  }

  private List<Complaint.Uncovered> uncovered(double all) {
    BitSet named = context.findings().named(tree);
    var uncovered = new ArrayList<Complaint.Uncovered>();
    Arrays.stream(population.cases()).filter(i -> i > 0 && !named.get(i)).forEach(i -> uncovered
        .add(new Complaint.Uncovered(names.get(i), all == 0 ? 0 : context.installations().likelihood(i) / all)));
    uncovered.sort(Comparator.comparingDouble((Complaint.Uncovered one) -> -one.likelihood()));
    return uncovered;
  }
}
