package rungbook.ladder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import rungbook.system.ControlSystem;
import rungbook.system.Part;
import rungbook.text.Lettering;

/** A drawing at the width of a phone of 320 px and of a desk. */
class LadderDrawingTest {

  static List<Named<ControlSystem>> starters() throws IOException {
    return LadderTest.starters();
  }

  private static Element svg(String drawing) {
    try {
      return DocumentBuilderFactory.newInstance().newDocumentBuilder()
          .parse(new InputSource(new StringReader(drawing))).getDocumentElement();
    } catch (Exception e) {
      throw new IllegalStateException(drawing, e);
    }
  }

  private record Label(double left, double right, double y, String words) {}

  private static List<Label> labels(Element svg) {
    NodeList texts = svg.getElementsByTagName("text");
    var labels = new ArrayList<Label>();
    for (int i = 0; i < texts.getLength(); i++) {
      Element text = (Element) texts.item(i);
      double size = switch (text.getAttribute("class")) {
        case "b" -> 13;
        case "h" -> 14;
        case "t" -> 15;
        default -> 12;
      };
      double width = Lettering.width(text.getTextContent(), size);
      double x = Double.parseDouble(text.getAttribute("x"));
      String anchor = text.getAttribute("text-anchor");
      double left = anchor.equals("start") ? x : anchor.equals("end") ? x - width : x - width / 2;
      labels.add(new Label(left, left + width, Double.parseDouble(text.getAttribute("y")), text.getTextContent()));
    }
    return labels;
  }

  @ParameterizedTest
  @MethodSource("starters")
  void everyLabelIsInsideAndApartFromItsNeighbors(ControlSystem system) {
    for (int width : new int[] {LadderDrawing.NARROW, 880}) {
      Element svg = svg(LadderDrawing.of(Ladder.of(system), width, Set.of()));
      assertEquals(Integer.toString(width), svg.getAttribute("width"));
      List<Label> labels = labels(svg);
      for (Label one : labels) {
        assertTrue(one.left() >= 0 && one.right() <= width, one.words());
        labels.stream().filter(other -> other != one && other.y() == one.y() && other.left() >= one.left())
            .forEach(other -> assertTrue(other.left() > one.right(), one.words() + " meets " + other.words()));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("starters")
  void theSameSystemGivesTheSameBytes(ControlSystem system) {
    assertEquals(LadderDrawing.of(Ladder.of(system), 880, Set.of()),
        LadderDrawing.of(Ladder.of(system), 880, Set.of()));
  }

  @ParameterizedTest
  @MethodSource("starters")
  void aRungWithCurrentSaysSo(ControlSystem system) {
    String part = system.parts(Part.Load.class).findFirst().orElseThrow().key();
    assertTrue(LadderDrawing.of(Ladder.of(system), 880, Set.of(part)).contains(": current</text>"));
    assertFalse(LadderDrawing.of(Ladder.of(system), 880, Set.of()).contains(": current"));
  }
}
