package rungbook.pack.drawing;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** A finished drawing, read back from its SVG. */
record Drawn(Element svg) {

  /** @param bold of a terminal that a lead touches */
  record Label(String text, double x, double y, boolean bold) {}

  static Drawn of(String html) {
    try {
      var xml = DocumentBuilderFactory.newInstance().newDocumentBuilder()
          .parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
      return new Drawn((Element) xml.getElementsByTagName("svg").item(0));
    } catch (Exception e) {
      throw new AssertionError(html, e);
    }
  }

  /** Where leads of a color begin. */
  List<double[]> starts(String color) {
    return elements("path").stream().filter(path -> path.getAttribute("class").equals(color))
        .map(path -> path.getAttribute("d").substring(1).split("[HV]", 2)[0].split(" "))
        .map(xy -> new double[] {Double.parseDouble(xy[0]), Double.parseDouble(xy[1])}).toList();
  }

  /** The texts in letters of a terminal, in the order of the file. */
  List<Label> labels() {
    return elements("text").stream().map(text -> {
      String[] moved = translation(text);
      return new Label(text.getTextContent(), Double.parseDouble(text.getAttribute("x")) + Double.parseDouble(moved[0]),
          Double.parseDouble(text.getAttribute("y")) + Double.parseDouble(moved[1]),
          text.getAttribute("class").equals("b"));
    }).toList();
  }

  String words() {
    return svg.getAttribute("aria-label");
  }

  double width() {
    return Double.parseDouble(svg.getAttribute("viewBox").split(" ")[2]);
  }

  List<String> symbols() {
    return elements("path").stream().filter(path -> path.hasAttribute("transform")).map(path -> path.getAttribute("d"))
        .toList();
  }

  long count(String kind) {
    return List.of("path", "rect", "text").stream().flatMap(name -> elements(name).stream())
        .filter(element -> element.getAttribute("class").equals(kind)).count();
  }

  /** How many terminals are drawn as {@code tab} or {@code screw}; one path has them all. */
  long terminals(String kind) {
    return elements("path").stream().filter(path -> path.getAttribute("class").equals(kind))
        .mapToLong(path -> path.getAttribute("d").chars().filter(c -> c == 'M').count()).sum();
  }

  private static String[] translation(Node text) {
    Element group = (Element) text.getParentNode();
    return group.getTagName().equals("g")
        ? group.getAttribute("transform").replaceAll("translate\\((.*)\\)", "$1").split(" ") : new String[] {"0", "0"};
  }

  private List<Element> elements(String name) {
    NodeList found = svg.getElementsByTagName(name);
    var list = new ArrayList<Element>();
    for (int i = 0; i < found.getLength(); i++) {
      list.add((Element) found.item(i));
    }
    return list;
  }
}
