package rungbook.rules.paths;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Span;
import rungbook.source.Witness;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/**
 * A way to another tree from which a path comes back to a step of this one that it has passed, with answers that do not
 * contradict each other. Where something is repaired on the way, the next time around is not the same. A breadth-first
 * search, so the path is a shortest one.
 */
public final class TreesCircle {

  static final Code TREES_CIRCLE = Code.of("trees-circle");

  /** Past this many ways taken the search ends; the circles found so far are real. */
  private static final int MOST_WAYS = 20_000;

  private final Tree first;
  private final Map<String, Tree> trees;
  private final WayBack back;
  private final CommonAnswers answers;
  private final Deque<Round> queue = new ArrayDeque<>();
  private final Set<Round.Place> reached = new HashSet<>();
  private final Map<Equipment, Equipment> states = new HashMap<>();
  private final Map<Integer, Problem> found = new LinkedHashMap<>();

  private TreesCircle(Tree first, Map<String, Tree> trees) {
    this.first = first;
    this.trees = trees;
    this.back = WayBack.to(first, trees);
    this.answers = CommonAnswers.of(trees.values(), back);
  }

  /** @param others the trees through which a path may come back to this one, by id; may contain the tree itself */
  public static List<Problem> inspect(Tree tree, Map<String, Tree> others) {
    Map<String, Tree> trees = new LinkedHashMap<>(others);
    trees.put(tree.id(), tree);
    TreesCircle search = new TreesCircle(tree, trees);
    search.search();
    return List.copyOf(search.found.values());
  }

  private void search() {
    if (first.steps().isEmpty()) {
      return;
    }
    reach(Round.start(first, state(Equipment.UNTOUCHED)));
    int taken = 0;
    while (!queue.isEmpty() && taken < MOST_WAYS) {
      Round at = queue.remove();
      List<Way> ways = WayBack.repairs(at.here()) ? List.of() : at.here().ways();
      Equipment after = state(at.equipment().after(at.here(), at.tree()));
      for (int way = 0; way < ways.size(); way++) {
        taken++;
        Known known = at.after(way, answers);
        if (known != null) {
          take(ways.get(way), new Round.Taken(at, way, after, known));
        }
      }
    }
  }

  private void take(Way way, Round.Taken taken) {
    if (way.target() instanceof Target.ToStep to) {
      reach(taken, taken.from().tree(), to.step(), taken.from().out());
    } else if (way.target() instanceof Target.ToTree to) {
      Optional.ofNullable(trees.get(to.tree())).ifPresent(tree -> cross(taken, tree, WayBack.entry(to, tree)));
    }
  }

  @SuppressWarnings("ReferenceEquality") // a tree's value is its whole text
  private void cross(Round.Taken taken, Tree next, int step) {
    Round at = taken.from();
    int out = at.tree() == first ? at.number(taken.way()) : at.out();
    if (step == WayBack.NO_STEP) {
      return;
    }
    if (!at.passed().contains(Round.key(next, step))) {
      reach(taken, next, step, out);
    } else if (next == first) {
      found.computeIfAbsent(out, any -> problem(out, at, taken.way(), step));
    }
  }

  private void reach(Round.Taken taken, Tree tree, int step, int out) {
    if (back.leadsFrom(tree, step)) {
      reach(new Round(taken, tree, step, out, passed(taken.from().passed(), tree, step)));
    }
  }

  private void reach(Round round) {
    if (reached.add(round.place())) {
      queue.add(round);
    }
  }

  /** The same object for equal states, so that comparing them is quick. */
  private Equipment state(Equipment equipment) {
    return states.computeIfAbsent(equipment, same -> same);
  }

  /** The steps passed, as far as another tree leads to them. */
  private Set<String> passed(Set<String> before, Tree tree, int step) {
    if (!back.isEntry(tree, step)) {
      return before;
    }
    Set<String> passed = new HashSet<>(before);
    passed.add(Round.key(tree, step));
    return Set.copyOf(passed);
  }

  private Problem problem(int out, Round last, int back, int step) {
    List<Round> path = new ArrayList<>();
    for (Round at = last; at != null; at = at.before()) {
      path.add(0, at);
    }
    return Problem.at(TREES_CIRCLE, first.source(), span(out, path)).with("circle", circle(path))
        .shownBy(witness(path, back, step));
  }

  /** Where the tree's own text leads out: the way on, or the step that takes in the fragment with the way on. */
  @SuppressWarnings("ReferenceEquality") // a tree's value is its whole text
  private Span span(int out, List<Round> path) {
    Step left = first.steps().get(out / Step.MOST_ANSWERS);
    Span own = left.ways().get(out % Step.MOST_ANSWERS).span();
    for (int i = path.size() - 1; left.source() != first.source() && i >= 0; i--) {
      if (path.get(i).tree() == first && path.get(i).here().source() == first.source()) {
        return path.get(i).here().header().titleSpan();
      }
    }
    return own;
  }

  private String circle(List<Round> path) {
    List<String> titles = new ArrayList<>();
    path.forEach(at -> {
      if (titles.isEmpty() || !titles.get(titles.size() - 1).equals(at.tree().title())) {
        titles.add(at.tree().title());
      }
    });
    titles.add(first.title());
    return String.join(" > ", titles);
  }

  private Witness witness(List<Round> path, int back, int step) {
    List<Witness.Stop> stops = new ArrayList<>();
    for (int i = 0; i < path.size(); i++) {
      int taken = i + 1 < path.size() ? path.get(i + 1).way() : back;
      stops.add(stop(path.get(i).here(), path.get(i).here().ways().get(taken).written()));
    }
    stops.add(stop(first.steps().get(step), ""));
    return new Witness.Path(stops);
  }

  private static Witness.Stop stop(Step passed, String answer) {
    return new Witness.Stop(passed.title(), passed.source(), passed.header().titleSpan(), answer);
  }
}
