package rungbook.map;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/**
 * A tree as a graph to draw.
 *
 * @param nodes the tree's steps in order, then the other trees it leads to; the first node is the start
 */
public record Diagram(String title, List<Node> nodes, List<Wire> wires) {

  /** The shape of a node; its letter is in the drawing too, for readers who do not know the shapes. */
  public enum Shape {
    CONTACT("C", "Check"), BLOCK("T", "Task"), COIL("F", "Finding"), RAIL("E", "End"), FLAG("→", "Other tree");

    private final String letter;
    private final String word;

    Shape(String letter, String word) {
      this.letter = letter;
      this.word = word;
    }

    public String letter() {
      return letter;
    }

    public String word() {
      return word;
    }
  }

  /**
   * @param note a short summary of what is read, done or found
   * @param href the link's target
   */
  public record Node(Shape shape, String title, String note, String href) {}

  /**
   * @param from index of a node
   * @param to index of a node
   * @param share the share of the likelihood that passes here, 0 to 1; empty without a proof
   */
  public record Wire(int from, int to, String answer, OptionalDouble share) {}

  /** The share of the likelihood that takes a step's way on, 0 to 1. */
  public interface Shares {
    /** Used when there is no proof. */
    Shares UNKNOWN = (step, way) -> OptionalDouble.empty();

    OptionalDouble of(Step step, Way way);
  }

  public Diagram {
    nodes = List.copyOf(nodes);
    wires = List.copyOf(wires);
  }

  /** A tree's diagram. Leaves out ways with a broken link: each has a problem. */
  public static Diagram of(Tree tree, Shares shares) {
    var nodes = new ArrayList<>(tree.steps().stream().map(Diagram::node).toList());
    var flags = new LinkedHashMap<Target.ToTree, Integer>();
    var wires = new ArrayList<Wire>();
    for (var from = 0; from < tree.steps().size(); from++) {
      for (var way : tree.steps().get(from).ways()) {
        var to = target(way, nodes, flags);
        if (to >= 0) {
          wires.add(new Wire(from, to, way.written(), shares.of(tree.steps().get(from), way)));
        }
      }
    }
    return new Diagram(tree.title(), nodes, joined(wires));
  }

  /** The same with more said of some steps, by their index. */
  public Diagram noting(Map<Integer, String> more) {
    var noted = new ArrayList<>(nodes);
    more.forEach((step, words) -> {
      var node = noted.get(step);
      noted.set(step, new Node(node.shape(), node.title(), node.note() + ", " + words, node.href()));
    });
    return new Diagram(title, noted, wires);
  }

  private static int target(Way way, List<Node> nodes, Map<Target.ToTree, Integer> flags) {
    if (way.target() instanceof Target.ToStep step) {
      return step.step();
    }
    return way.target() instanceof Target.ToTree tree
        ? flags.computeIfAbsent(tree, other -> addFlag(other, way.label(), nodes)) : -1;
  }

  private static int addFlag(Target.ToTree tree, String label, List<Node> nodes) {
    nodes.add(new Node(Shape.FLAG, label, "another tree",
        tree.tree() + ".md" + tree.step().map(step -> "#" + step).orElse("")));
    return nodes.size() - 1;
  }

  // several answers that lead to the same step share a wire
  private static List<Wire> joined(List<Wire> wires) {
    var byEnds = wires.stream().collect(
        Collectors.groupingBy(wire -> List.of(wire.from(), wire.to()), LinkedHashMap::new, Collectors.toList()));
    return byEnds.values().stream().map(Diagram::join).toList();
  }

  private static Wire join(List<Wire> same) {
    var answers = same.stream().map(Wire::answer).collect(Collectors.joining(" / "));
    var known = same.stream().map(Wire::share).filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble).toArray();
    var share = known.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(Arrays.stream(known).sum());
    return new Wire(same.get(0).from(), same.get(0).to(), answers, share);
  }

  private static Node node(Step step) {
    return new Node(shape(step), step.title(), Notes.of(step), "#" + step.id());
  }

  private static Shape shape(Step step) {
    if (step instanceof Step.Check) {
      return Shape.CONTACT;
    }
    return step instanceof Step.Finding ? Shape.COIL : step instanceof Step.End ? Shape.RAIL : Shape.BLOCK;
  }
}
