package rungbook.map;

import java.util.EnumSet;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.elk.alg.layered.options.LayeredMetaDataProvider;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.alg.layered.options.NodePlacementStrategy;
import org.eclipse.elk.alg.layered.options.OrderingStrategy;
import org.eclipse.elk.core.RecursiveGraphLayoutEngine;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.math.ElkPadding;
import org.eclipse.elk.core.options.CoreOptions;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.options.SizeConstraint;
import org.eclipse.elk.core.util.BasicProgressMonitor;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.util.ElkGraphUtil;
import rungbook.text.Lettering;

/** A diagram with coordinates in pixels from the top left. */
record DiagramLayout(Diagram diagram, double width, double height, List<Box> boxes, List<Run> runs) {

  static final double TITLE_PX = 15;
  static final double NOTE_PX = 13;
  static final double LINE_PX = 19;
  // bold faces run about this much wider
  private static final double BOLD = 1.12;
  private static final double TEXT_WIDTH_PX = 190;
  private static final double SIDES_PX = 36;
  private static final double TOP_AND_BOTTOM_PX = 36;
  private static final double AROUND_PX = 24;
  private static final double ABOVE_PX = 56;

  /** A node's position, size, and lines of text. */
  record Box(Diagram.Node node, double x, double y, double width, double height, List<String> title,
      List<String> note) {}

  record Point(double x, double y) {}

  /** A wire's points from end to end, and the top left corner of its answer. */
  record Run(Diagram.Wire wire, List<Point> points, Point answerAt, String answer) {}

  static {
    LayoutMetaDataService.getInstance().registerLayoutMetaDataProviders(new LayeredMetaDataProvider());
  }

  static DiagramLayout of(Diagram diagram) {
    var root = ElkGraphUtil.createGraph();
    configure(root);
    var nodes = diagram.nodes().stream().map(node -> add(node, root)).toList();
    var edges = diagram.wires().stream().map(wire -> add(wire, nodes)).toList();
    new RecursiveGraphLayoutEngine().layout(root, new BasicProgressMonitor());
    return new DiagramLayout(diagram, root.getWidth(), root.getHeight(), boxes(diagram, nodes), runs(diagram, edges));
  }

  private static void configure(ElkNode root) {
    root.setProperty(CoreOptions.ALGORITHM, LayeredOptions.ALGORITHM_ID);
    root.setProperty(LayeredOptions.DIRECTION, Direction.DOWN);
    root.setProperty(LayeredOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
    root.setProperty(LayeredOptions.NODE_PLACEMENT_STRATEGY, NodePlacementStrategy.BRANDES_KOEPF);
    root.setProperty(LayeredOptions.CONSIDER_MODEL_ORDER_STRATEGY, OrderingStrategy.PREFER_EDGES);
    root.setProperty(LayeredOptions.SPACING_NODE_NODE, 36.0);
    root.setProperty(LayeredOptions.SPACING_EDGE_NODE, 20.0);
    root.setProperty(LayeredOptions.SPACING_EDGE_EDGE, 14.0);
    root.setProperty(LayeredOptions.SPACING_EDGE_LABEL, 4.0);
    root.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, 30.0);
    root.setProperty(LayeredOptions.SPACING_EDGE_NODE_BETWEEN_LAYERS, 16.0);
    root.setProperty(LayeredOptions.PADDING, new ElkPadding(ABOVE_PX, AROUND_PX, AROUND_PX, AROUND_PX));
    root.setProperty(LayeredOptions.RANDOM_SEED, 1);
  }

  private static ElkNode add(Diagram.Node node, ElkNode root) {
    var added = ElkGraphUtil.createNode(root);
    var lines = title(node).size() + note(node).size();
    added.setDimensions(TEXT_WIDTH_PX + SIDES_PX, lines * LINE_PX + TOP_AND_BOTTOM_PX);
    added.setProperty(LayeredOptions.NODE_SIZE_CONSTRAINTS, EnumSet.noneOf(SizeConstraint.class));
    return added;
  }

  private static ElkEdge add(Diagram.Wire wire, List<ElkNode> nodes) {
    var edge = ElkGraphUtil.createSimpleEdge(nodes.get(wire.from()), nodes.get(wire.to()));
    var label = ElkGraphUtil.createLabel(answer(wire), edge);
    label.setDimensions(answerWidth(answer(wire)), LINE_PX);
    return edge;
  }

  private static List<String> title(Diagram.Node node) {
    return Lettering.wrap(node.title(), TITLE_PX * BOLD, TEXT_WIDTH_PX, 4);
  }

  private static List<String> note(Diagram.Node node) {
    return Lettering.wrap(node.note(), NOTE_PX, TEXT_WIDTH_PX, 2);
  }

  /** The label of a wire: the answer, and the share in percent if known. */
  private static String answer(Diagram.Wire wire) {
    var answer = Lettering.wrap(wire.answer(), NOTE_PX, TEXT_WIDTH_PX, 1);
    var words = answer.isEmpty() ? "" : answer.get(0);
    return wire.share().isPresent() ? words + " · " + Math.round(wire.share().getAsDouble() * 100) + " %" : words;
  }

  /** The width of an answer, in pixels. */
  static double answerWidth(String answer) {
    return Lettering.width(answer, NOTE_PX * BOLD) + 8;
  }

  private static List<Box> boxes(Diagram diagram, List<ElkNode> placed) {
    var nodes = diagram.nodes().iterator();
    return placed.stream().map(at -> box(nodes.next(), at)).toList();
  }

  private static Box box(Diagram.Node node, ElkNode at) {
    return new Box(node, at.getX(), at.getY(), at.getWidth(), at.getHeight(), title(node), note(node));
  }

  private static List<Run> runs(Diagram diagram, List<ElkEdge> placed) {
    var wires = diagram.wires().iterator();
    return placed.stream().map(edge -> run(wires.next(), edge)).toList();
  }

  private static Run run(Diagram.Wire wire, ElkEdge edge) {
    var label = edge.getLabels().get(0);
    var points = edge.getSections().stream().flatMap(DiagramLayout::points).toList();
    return new Run(wire, points, new Point(label.getX(), label.getY()), answer(wire));
  }

  private static Stream<Point> points(ElkEdgeSection section) {
    var bends = section.getBendPoints().stream().map(bend -> new Point(bend.getX(), bend.getY()));
    return Stream.of(Stream.of(new Point(section.getStartX(), section.getStartY())), bends,
        Stream.of(new Point(section.getEndX(), section.getEndY()))).flatMap(part -> part);
  }
}
