package rungbook.rules.flow;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rungbook.action.EquipmentCondition;
import rungbook.source.Witness;
import rungbook.tree.Action;
import rungbook.tree.Step;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/**
 * What may hold and what must hold at every step and between its actions. A fact holds on some path, or is absent on
 * some path, or both; each is one dataflow problem. If a task's answer says that it failed, its {@code prove dead},
 * {@code try} and {@code discharge} do not count.
 */
public final class PathFacts {

  /** Steps times words of 64 facts: 8 MB in all, far beyond any tree that people write. */
  private static final long MOST_WORDS = 1L << 18;

  private final Tree tree;
  private final FlowGraph graph;
  private final FactTable facts;
  private final ActionTransfer transfer;
  private final DataflowSolver[] holds;
  private final DataflowSolver[] lacks;
  private final WitnessPaths witnesses;
  private @Nullable JointStates joint;

  private PathFacts(Tree tree, FlowGraph graph, FactTable facts, ActionTransfer transfer, DataflowSolver[] holds,
      DataflowSolver[] lacks) {
    this.tree = tree;
    this.graph = graph;
    this.facts = facts;
    this.transfer = transfer;
    this.holds = holds;
    this.lacks = lacks;
    this.witnesses = new WitnessPaths(tree, graph);
  }

  public static PathFacts of(Tree tree, FlowGraph graph) {
    FactTable facts = FactTable.of(tree);
    int words = (facts.count() + 63) >> 6;
    boolean tooMany = (long) words * tree.steps().size() > MOST_WORDS;
    ActionTransfer transfer = ActionTransfer.of(tooMany ? List.of() : tree.steps(), facts);
    PathFacts state = new PathFacts(tree, graph, facts, transfer, new DataflowSolver[tooMany ? 0 : words],
        new DataflowSolver[tooMany ? 0 : words]);
    state.solve();
    return state;
  }

  /** Whether the tree has too many names to analyze; then nothing is known about any step. */
  public boolean isTooLarge() {
    return holds.length == 0;
  }

  public FactTable facts() {
    return facts;
  }

  public FlowGraph graph() {
    return graph;
  }

  /** The reachable steps in reverse postorder; none if the tree is too large. */
  public int[] order() {
    return isTooLarge() ? new int[0] : graph.order();
  }

  public Step step(int step) {
    return tree.steps().get(step);
  }

  /** The states as wholes; found at the first call. Only for a tree whose system has parts. */
  public JointStates joint() {
    if (joint == null) {
      joint = JointStates.of(tree.circuits().orElseThrow(), this, transfer, witnesses);
    }
    return joint;
  }

  /** A new point; call {@link ProgramPoint#enter} before using it. */
  public ProgramPoint point() {
    return new ProgramPoint();
  }

  /** What may and must hold at one point of a step. Mutable, so one object serves a whole tree. */
  public final class ProgramPoint {

    private final FactDelta delta = new FactDelta(holds.length);
    private int step;
    private int done;

    public void enter(int step) {
      this.step = step;
      this.done = 0;
      for (int word = 0; word < holds.length; word++) {
        delta.on[word] = holds[word].at(step);
        delta.off[word] = lacks[word].at(step);
      }
    }

    /** Moves past the next action of the step. */
    public void pass() {
      transfer.apply(step, done, ++done, delta);
    }

    /** Moves past all remaining actions of the step. */
    public void finish() {
      int all = transfer.count(step);
      transfer.apply(step, done, all, delta);
      done = all;
    }

    /** On some path. */
    public boolean may(int fact) {
      return fact != FactTable.NONE && (delta.on[fact >> 6] & 1L << fact) != 0;
    }

    /** On every path. */
    public boolean must(int fact) {
      return fact != FactTable.NONE && (delta.off[fact >> 6] & 1L << fact) == 0;
    }

    /**
     * Whether power is off on every path: nothing was switched on after something was switched off, or one source is
     * off on all paths.
     */
    public boolean isPowerOff() {
      if (must(facts.of(Fact.POWER_OFF))) {
        return true;
      }
      for (int source = facts.first(Fact.ISOLATED); source < facts.end(Fact.ISOLATED); source++) {
        if (must(source)) {
          return true;
        }
      }
      return false;
    }

    /**
     * The first fact of a kind, at or after {@code from}, that holds on some path; {@link FactTable#NONE} if there is
     * none.
     */
    public int nextMay(Fact kind, int from) {
      for (int fact = Math.max(from, facts.first(kind)); fact < facts.end(kind); fact++) {
        if (may(fact)) {
          return fact;
        }
      }
      return FactTable.NONE;
    }

    /**
     * The first fact of a kind, at or after {@code from}, that does not hold on some path; {@link FactTable#NONE} if
     * there is none.
     */
    public int nextLacking(Fact kind, int from) {
      for (int fact = Math.max(from, facts.first(kind)); fact < facts.end(kind); fact++) {
        if (!must(fact)) {
          return fact;
        }
      }
      return FactTable.NONE;
    }

    /** A path to this point on which a fact holds; empty once the tree's budget for paths is spent. */
    public Optional<Witness> showHolding(int fact, String answer) {
      return shows(step, done, fact, true, answer);
    }

    /** A path to this point on which a fact does not hold; empty once the tree's budget for paths is spent. */
    public Optional<Witness> showLacking(int fact, String answer) {
      return fact != FactTable.NONE ? shows(step, done, fact, false, answer)
          : witnesses.isSpent() ? Optional.empty() : witnesses.along(graph.shortestTo(step), step, answer);
    }
  }

  /** A path to a step by these ways; empty once the tree's budget for paths is spent. */
  public Optional<Witness> show(int[] ways, int step) {
    return witnesses.isSpent() ? Optional.empty() : witnesses.along(ways, step, "");
  }

  private Optional<Witness> shows(int step, int done, int fact, boolean holding, String answer) {
    if (witnesses.isSpent()) {
      return Optional.empty();
    }
    FactDelta own = new FactDelta(holds.length);
    transfer.apply(step, 0, done, own);
    long bit = 1L << fact;
    boolean here = ((holding ? own.on : own.off)[fact >> 6] & bit) != 0;
    DataflowSolver flow = (holding ? holds : lacks)[fact >> 6];
    return witnesses.along(here ? graph.shortestTo(step) : flow.pathTo(step, bit), step, answer);
  }

  private void solve() {
    int size = graph.size();
    int words = holds.length;
    long[][] gen = new long[words][size];
    long[][] kill = new long[words][size];
    long @Nullable [][] failed = null;
    long @Nullable [][] stillLive = null;
    FactDelta delta = new FactDelta(words);
    for (int step : order()) {
      if (transfer.count(step) > 0) {
        delta.reset();
        transfer.apply(step, 0, transfer.count(step), delta);
        for (int word = 0; word < words; word++) {
          gen[word][step] = delta.on[word];
          kill[word][step] = delta.off[word];
        }
        failed = markFailures(step, delta, failed);
        stillLive = markStillLive(step, stillLive);
      }
    }
    long[] start = new long[words];
    facts.forStart(fact -> start[fact >> 6] |= 1L << fact);
    for (int word = 0; word < words; word++) {
      long @Nullable [] onFailure = failed == null ? null : failed[word];
      long @Nullable [] live = stillLive == null ? null : stillLive[word];
      holds[word] = DataflowSolver.solve(graph, start[word], gen[word], kill[word], live, onFailure);
      lacks[word] = DataflowSolver.solve(graph, ~start[word], kill[word], gen[word], onFailure, live);
    }
  }

  /**
   * Marks the facts that fail on the ways on that say a task failed; by word, then by way. Null while there are none.
   */
  private long @Nullable [][] markFailures(int step, FactDelta delta, long @Nullable [][] failed) {
    if (!provesSomething(step)) {
      return failed;
    }
    long @Nullable [][] marked = failed;
    List<Way> ways = step(step).ways();
    for (int way = 0; way < ways.size(); way++) {
      if (!Success.isMeant(ways.get(way).written(), way)) {
        marked = marked == null ? new long[holds.length][graph.ways()] : marked;
        for (int word = 0; word < holds.length; word++) {
          marked[word][graph.firstWay(step) + way] = delta.on[word] & proofs(word) & ~switchedOn(delta, word);
        }
      }
    }
    return marked;
  }

  /** The sources that a step leaves on, as facts that they are on or tried: these do not fail. */
  private long switchedOn(FactDelta delta, int word) {
    long on = 0;
    for (int source = facts.first(Fact.TRIED); source < facts.end(Fact.TRIED); source++) {
      int isolated = facts.of(Fact.ISOLATED, facts.words(source));
      boolean restored = isolated != FactTable.NONE && (delta.off[isolated >> 6] & 1L << isolated) != 0;
      on |= restored && source >> 6 == word ? 1L << source : 0;
    }
    return on;
  }

  /** Marks, on the ways on that say that a proof or a try failed, what is still live; by word, then by way. */
  private long @Nullable [][] markStillLive(int step, long @Nullable [][] stillLive) {
    long @Nullable [][] marked = stillLive;
    List<Way> ways = step(step).ways();
    for (int live = facts.first(Fact.STILL_LIVE); live < facts.end(Fact.STILL_LIVE); live++) {
      for (int way = 0; way < ways.size() && showsOff(step(step), facts.words(live)); way++) {
        if (!Success.isMeant(ways.get(way).written(), way)) {
          marked = marked == null ? new long[holds.length][graph.ways()] : marked;
          marked[live >> 6][graph.firstWay(step) + way] |= 1L << live;
        }
      }
    }
    return marked;
  }

  /** Whether a step shows that a place is off: a meter does so at its own place, a try where the source feeds. */
  private boolean showsOff(Step step, String place) {
    return step.actions().stream()
        .anyMatch(
            action -> (action.kind().begins(EquipmentCondition.PROVED_DEAD) && place.equals(FactTable.place(step)))
                || (action.kind().begins(EquipmentCondition.TRIED) && tree.hazards().feeds(action.key(), place)));
  }

  private boolean provesSomething(int step) {
    List<Action> done = step(step).actions();
    for (int i = 0; i < done.size(); i++) {
      if (done.get(i).kind().needsSuccess()) {
        return true;
      }
    }
    return false;
  }

  private long proofs(int word) {
    return FactDelta.mask(facts.first(Fact.PROVED_ANYWHERE), facts.end(Fact.DISCHARGED_ANY), word)
        | FactDelta.mask(facts.first(Fact.PROVED_AT), facts.end(Fact.TRIED), word);
  }
}
