package rungbook.proof.plan;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rungbook.tree.NameRef;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/**
 * Which cases are named by the findings that a way on can reach, as bits by case number; bit 0 is a finding of no
 * fault.
 */
public final class ReachableFindings {

  private final Map<String, BitSet> casesByFault = new HashMap<>();
  private final OtherTrees others;
  private final Map<String, BitSet> byTree = new HashMap<>();
  private final BitSet everything = new BitSet();

  /**
   * @param cases by case, the keys of its faults
   * @param others the other trees of the library, by id
   */
  ReachableFindings(List<List<String>> cases, OtherTrees others) {
    for (int i = 0; i < cases.size(); i++) {
      for (String fault : cases.get(i)) {
        casesByFault.computeIfAbsent(fault, any -> new BitSet()).set(i);
      }
    }
    everything.set(0, cases.size());
    this.others = others;
  }

  /**
   * The cases that the findings reachable from each step name, by step.
   *
   * @param own by findings in this tree
   * @param any by findings in this tree or another that takes over
   */
  public record ByStep(BitSet[] own, BitSet[] any) {}

  public ByStep of(List<Step> steps, int[] order) {
    return new ByStep(of(steps, order, false), of(steps, order, true));
  }

  private BitSet[] of(List<Step> steps, int[] order, boolean elsewhere) {
    BitSet[] reachable = new BitSet[steps.size()];
    for (int i = 0; i < reachable.length; i++) {
      reachable[i] = new BitSet();
    }
    for (int i = order.length - 1; i >= 0; i--) {
      Step step = steps.get(order[i]);
      BitSet here = reachable[order[i]];
      if (step instanceof Step.Finding finding) {
        here.or(named(finding));
        here.set(0, finding.healthy());
      } else {
        step.ways().forEach(way -> here.or(of(way, reachable, elsewhere)));
      }
    }
    return reachable;
  }

  /** The cases of which a finding names a fault: of two faults together, either. */
  public BitSet named(Step.Finding finding) {
    return named(finding.faults().stream().map(NameRef::key));
  }

  private BitSet named(Stream<String> faults) {
    BitSet named = new BitSet();
    faults.forEach(fault -> named.or(casesByFault.getOrDefault(fault, new BitSet())));
    return named;
  }

  /** The cases that some finding of a tree names, or of a tree that takes over from it. */
  public BitSet named(Tree tree) {
    TreeClaims claims = TreeClaims.of(tree);
    BitSet named = findings(claims);
    claims.takingOver().forEach(other -> named.or(of(other)));
    return named;
  }

  public BitSet own(Way way, ByStep reachable) {
    return of(way, reachable.own(), false);
  }

  public BitSet any(Way way, ByStep reachable) {
    return of(way, reachable.any(), true);
  }

  private BitSet of(Way way, BitSet[] reachable, boolean elsewhere) {
    if (way.target() instanceof Target.ToStep to) {
      return reachable[to.step()];
    }
    return elsewhere && way.target() instanceof Target.ToTree to ? of(to.tree()) : new BitSet();
  }

  private BitSet of(String tree) {
    BitSet known = byTree.get(tree);
    if (known == null) {
      known = all(tree);
      byTree.put(tree, known);
    }
    return known;
  }

  /** Trees may lead to each other, so each is visited once. A tree that is not at hand may name anything. */
  private BitSet all(String first) {
    BitSet all = new BitSet();
    Set<String> seen = new HashSet<>(Set.of(first));
    Deque<String> pending = new ArrayDeque<>(seen);
    while (!pending.isEmpty()) {
      Optional<TreeClaims> tree = others.claims(pending.pop());
      all.or(tree.map(this::findings).orElse(everything));
      tree.stream().flatMap(claims -> claims.takingOver().stream()).filter(seen::add).forEach(pending::push);
    }
    return all;
  }

  private BitSet findings(TreeClaims tree) {
    BitSet findings = named(tree.faults().stream());
    findings.set(0, findings.get(0) || tree.isHealthyFound());
    return findings;
  }
}
