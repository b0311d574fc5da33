package rungbook.pack.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;

/**
 * The order of the steps on paper, each with its number and anchor: a fragment's steps follow the step that takes them
 * in.
 */
final class Outline {

  private final Tree tree;
  private final Map<String, List<Integer>> byPrefix = new LinkedHashMap<>();
  private final Map<String, Place> byId = new HashMap<>();
  private final List<Place> order = new ArrayList<>();
  private final Set<String> anchors = new HashSet<>();
  private final UnaryOperator<String> anchored;
  private final Map<Integer, List<Integer>> takes = new HashMap<>();

  /**
   * @param step its index in the tree
   * @param number {@code 7}, and {@code 7.2} for the second of the steps taken in at 7
   */
  record Place(int step, String number, String anchor) {}

  private Outline(Tree tree, UnaryOperator<String> anchors) {
    this.tree = tree;
    this.anchored = anchors;
    for (int step = 0; step < tree.steps().size(); step++) {
      byPrefix.computeIfAbsent(prefix(tree.steps().get(step)), any -> new ArrayList<>()).add(step);
    }
    number("", "");
    order.stream().map(Place::step).filter(this::isTake)
        .forEach(take -> takes.computeIfAbsent(page(take), any -> new ArrayList<>()).add(take));
  }

  /** As in the tree's own pack. */
  static Outline of(Tree tree) {
    return new Outline(tree, id -> id);
  }

  static Outline of(Tree tree, Medium medium) {
    return new Outline(tree, id -> medium.anchor(tree.id(), id));
  }

  private void number(String prefix, String before) {
    int count = 0;
    for (int index : byPrefix.getOrDefault(prefix, List.of())) {
      String id = tree.steps().get(index).id();
      String number = before + ++count;
      Place place = new Place(index, number, anchor(id));
      order.add(place);
      byId.put(id, place);
      number(id + "--", number + ".");
    }
  }

  /** A heading can be written so that its slug is another step's id; two steps must not share an anchor. */
  private String anchor(String id) {
    String anchor = id;
    while (!anchors.add(anchor)) {
      anchor += "-again";
    }
    return anchored.apply(anchor);
  }

  /** The prefix of the slug in the ids of the steps of one file. */
  static String prefix(Step step) {
    return step.id().substring(0, step.id().length() - step.header().section().slug().length());
  }

  /** Whether a step only takes a fragment in, so that it is no page of its own. */
  boolean isTake(int step) {
    return tree.steps().get(step).header().block().kind().equals("take");
  }

  /** The step on whose page a step is: itself, or the first step of the fragment that it takes in. */
  int page(int step) {
    int at = step;
    while (isTake(at) && tree.steps().get(at).ways().get(0).target() instanceof Target.ToStep to) {
      at = to.step();
    }
    return at;
  }

  /** The steps that take in a fragment which begins with this step, the outermost first. */
  List<Integer> takes(int step) {
    return takes.getOrDefault(step, List.of());
  }

  /** Those of the tree's own text; the steps of a fragment follow behind the one that takes it in. */
  List<Place> own() {
    return order.stream().filter(place -> prefix(tree.steps().get(place.step())).isEmpty()).toList();
  }

  List<Place> order() {
    return order;
  }

  Place place(int step) {
    return Objects.requireNonNull(byId.get(tree.steps().get(step).id()));
  }

  Optional<Place> place(String id) {
    return Optional.ofNullable(byId.get(id));
  }
}
