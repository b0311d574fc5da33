package rungbook.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import rungbook.map.Diagram.Node;
import rungbook.map.Diagram.Shape;
import rungbook.map.Diagram.Wire;
import rungbook.tree.SingleTree;

class DrawingTest {
  @Test
  void everyStepIsALinkWithItsKindInWordsAndALetter() throws Exception {
    var svg = xml(Drawing.of(small("Y at the board")));
    var links = svg.getElementsByTagName("a");
    assertEquals(3, links.getLength());
    assertEquals("#y", links.item(0).getAttributes().getNamedItem("href").getNodeValue());
    assertEquals("Check: Y at the board. AC volts, Y to C",
        links.item(0).getAttributes().getNamedItem("aria-label").getNodeValue());
    assertEquals("C", links.item(0).getChildNodes().item(3).getTextContent());
  }

  @Test
  void anEndSaysItsResult() throws Exception {
    var tree = SingleTree.read("## Left\n\n```end\nresult: left off and tagged\n```\n").tree();
    var link = xml(Drawing.of(Diagram.of(tree, Diagram.Shares.UNKNOWN))).getElementsByTagName("a").item(0);
    assertEquals("End: Left. left off and tagged", link.getAttributes().getNamedItem("aria-label").getNodeValue());
    assertEquals("E", link.getChildNodes().item(3).getTextContent());
  }

  @Test
  void aDrawingShownElsewhereLeadsToThePageWithTheSteps() throws Exception {
    var link = xml(Drawing.of(small("Y"), "/tree/trees/y.md")).getElementsByTagName("a").item(0);
    assertEquals("/tree/trees/y.md#y", link.getAttributes().getNamedItem("href").getNodeValue());
  }

  @Test
  void theSameDiagramGivesTheSameBytes() {
    assertEquals(Drawing.of(small("Y at the board")), Drawing.of(small("Y at the board")));
  }

  @Test
  void answersStandAtTheirWires() throws Exception {
    assertTrue(xml(Drawing.of(small("Y"))).getDocumentElement().getTextContent().contains("24 to 28"));
  }

  @Test
  void aKnownShareIsWrittenInWordsAndNotOnlyDrawn() {
    var nodes = List.of(node(Shape.CONTACT, "a"), node(Shape.COIL, "b"));
    var known = Drawing.of(new Diagram("t", nodes, List.of(new Wire(0, 1, "yes", OptionalDouble.of(0.625)))));
    var unknown = Drawing.of(new Diagram("t", nodes, List.of(new Wire(0, 1, "yes", OptionalDouble.empty()))));
    assertTrue(known.contains("yes · 63 %"));
    assertFalse(unknown.contains("%"));
  }

  @Test
  void markupInATitleStaysText() throws Exception {
    var svg = xml(Drawing.of(small("<script>alert(1)</script> \" onload=\"x")));
    assertEquals(0, svg.getElementsByTagName("script").getLength());
    assertFalse(svg.getElementsByTagName("a").item(0).getAttributes().getLength() > 2);
  }

  @Test
  void controlCharactersInATitleLeaveItXml() throws Exception {
    var label = xml(Drawing.of(small("Y\f at\u000b the\u0000 board \ud800."))).getElementsByTagName("a").item(0)
        .getAttributes().getNamedItem("aria-label");
    assertTrue(label.getNodeValue().startsWith("Check: Y\ufffd at\ufffd the\ufffd board \ufffd."),
        label.getNodeValue());
  }

  @Test
  void whatIsTooLargeToDrawIsSaid() throws Exception {
    var nodes = IntStream.range(0, 1_500).mapToObj(i -> node(Shape.CONTACT, "Step " + i)).toList();
    var wires = IntStream.range(0, 1_499).boxed()
        .flatMap(i -> java.util.stream.Stream.of(new Wire(i, i + 1, "yes", OptionalDouble.empty()),
            new Wire(i, 1_499, "no", OptionalDouble.empty())))
        .toList();
    assertTrue(xml(Drawing.of(new Diagram("t", nodes, wires))).getDocumentElement().getTextContent()
        .contains("too large to draw: 1500 steps"));
  }

  @Test
  void boxesDoNotOverlap() {
    var nodes = IntStream.range(0, 40).mapToObj(i -> node(i % 3 == 0 ? Shape.COIL : Shape.CONTACT, "Step number " + i))
        .toList();
    var wires = IntStream.range(1, 40).mapToObj(i -> new Wire((i - 1) / 2, i, "answer " + i, OptionalDouble.empty()))
        .toList();
    var boxes = DiagramLayout.of(new Diagram("t", nodes, wires)).boxes();
    for (var a = 0; a < boxes.size(); a++) {
      for (var b = a + 1; b < boxes.size(); b++) {
        assertFalse(overlap(boxes.get(a), boxes.get(b)), a + " and " + b);
      }
    }
  }

  @Test
  void aTreeWithoutStepsIsAnEmptyDrawing() throws Exception {
    assertEquals(0, xml(Drawing.of(new Diagram("t", List.of(), List.of()))).getElementsByTagName("a").getLength());
  }

  private static boolean overlap(DiagramLayout.Box a, DiagramLayout.Box b) {
    return a.x() < b.x() + b.width() && b.x() < a.x() + a.width() && a.y() < b.y() + b.height()
        && b.y() < a.y() + a.height();
  }

  private static Diagram small(String title) {
    var nodes = List.of(new Node(Shape.CONTACT, title, "AC volts, Y to C", "#y"), node(Shape.BLOCK, "Isolate"),
        node(Shape.COIL, "Coil open"));
    return new Diagram("t", nodes,
        List.of(new Wire(0, 1, "24 to 28", OptionalDouble.empty()), new Wire(1, 2, "done", OptionalDouble.empty())));
  }

  private static Node node(Shape shape, String title) {
    return new Node(shape, title, "note", "#" + title.length());
  }

  private static Document xml(String svg) throws Exception {
    return DocumentBuilderFactory.newInstance().newDocumentBuilder()
        .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
  }
}
