package rungbook.web.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import rungbook.proof.LampSteps;
import rungbook.proof.MadeUp;
import rungbook.proof.report.Proof;
import rungbook.tree.Tree;

/** The picture of the readings at a check, from readings written down by hand. */
class ReadingPictureTest {

  private static final String REFER = "refer: a senior technician";
  private static final String STEPS = LampSteps.onAndVolts("attic",
      "20 to 30: [All is good & well](#all-is-good--well)",
      "5 to 20: [The wire is weak between the hall and the attic](#the-wire-is-weak-between-the-hall-and-the-attic)",
      "anything else: [Dead](#dead)") + LampSteps.finding("All is good & well", "healthy: yes")
      + LampSteps.finding("The wire is weak between the hall and the attic", "fault: wire weak", REFER)
      + LampSteps.finding("Dead", "fault: lamp dead", REFER);

  private static final Tree TREE = MadeUp.tree("one", STEPS);
  private static final Proof.Check CHECK = new MadeUp(Map.of("healthy VOLTS", new double[] {26, 24, 25, 23},
      "lamp dead VOLTS", new double[] {0, 0, 1, 1}, "wire weak VOLTS", new double[] {15, 17, 16, 18})).prove(TREE)
      .checks().get(0);

  @Test
  void eachAnswerIsABarOverItsReadingsUnderTheNameOfWhereItLeads() throws Exception {
    Element svg = parsed();
    assertTrue(text(svg).contains("20 to 30: All is good & well"), text(svg));
    assertTrue(text(svg).contains("anything else: Dead"), text(svg));
    List<Element> bands = rects(svg, "band");
    assertEquals(4, bands.size(), "`anything else` is below and above");
    double scale = (300 - 16) / CHECK.histogram().high();
    assertEquals(8 + 20 * scale, number(bands.get(3), "x"), 0.1);
    assertEquals(10.1 * scale, number(bands.get(3), "width"), 0.1, "30.0 V is in it, 30.1 V is not");
  }

  /** ±(1 % + 3 digits): 18 V may show 18.5 V, and 23 V may show 22.5 V. */
  @Test
  void theRangeInWhichALimitWorksIsABar() throws Exception {
    double scale = (300 - 16) / CHECK.histogram().high();
    assertTrue(rects(parsed(), "room").stream().anyMatch(room -> Math.abs(number(room, "x") - 8 - 18.5 * scale) < 0.1
        && Math.abs(number(room, "width") - 4 * scale) < 0.1));
  }

  @Test
  void faultsAreMarkedByNameAndEverythingIsInsideThePicture() throws Exception {
    Element svg = parsed();
    assertEquals(2, rects(svg, "faulty").size());
    assertTrue(text(svg).contains("wire weak: 15 to 17 V"), text(svg));
    double height = Double.parseDouble(svg.getAttribute("viewBox").split(" ")[3]);
    NodeList all = svg.getElementsByTagName("rect");
    for (int i = 0; i < all.getLength(); i++) {
      Element rect = (Element) all.item(i);
      assertTrue(number(rect, "x") >= 8 && number(rect, "x") + number(rect, "width") <= 292.1);
      assertTrue(number(rect, "y") + number(rect, "height") <= height);
    }
  }

  @Test
  void theSameIsThereInSentences() {
    List<String> words = new PictureWords(CHECK, TREE).sentences();
    assertEquals("Good units read 24 to 26 V.", words.get(0));
    assertTrue(words.contains("Answer 20 to 30: All is good & well."), words.toString());
    assertTrue(words.contains("Limit 20 V: can be over 18.5 V, up to 22.5 V."), words.toString());
    assertTrue(words.contains("With the fault lamp dead: 0 to 1 V."), words.toString());
  }

  /** Four to ten round steps on every scale, from a hundredth of an amp to kilohms. */
  @Test
  void ticksAreRoundAndNeitherFewNorCrowded() {
    Random random = new Random(7);
    for (int i = 0; i < 2_000; i++) {
      double high = Math.pow(10, random.nextDouble() * 6 - 2);
      List<BigDecimal> ticks = new ReadingAxis(high, 8, 284).ticks();
      assertTrue(ticks.size() >= 5 && ticks.size() <= 11, high + " " + ticks);
      assertTrue(ticks.get(ticks.size() - 1).doubleValue() <= high * 1.000001, high + " " + ticks);
      assertEquals(1, ticks.get(1).stripTrailingZeros().precision(), high + " " + ticks);
    }
  }

  private static Element parsed() throws Exception {
    return DocumentBuilderFactory.newInstance().newDocumentBuilder()
        .parse(new InputSource(new StringReader(ReadingPicture.svg(CHECK, TREE)))).getDocumentElement();
  }

  /** Of all lines, one after the other. */
  private static String text(Element svg) {
    NodeList lines = svg.getElementsByTagName("text");
    return String.join(" ",
        IntStream.range(0, lines.getLength()).mapToObj(i -> lines.item(i).getTextContent()).toList())
        .replace("\u00a0", " ");
  }

  private static List<Element> rects(Element svg, String style) {
    NodeList all = svg.getElementsByTagName("rect");
    return IntStream.range(0, all.getLength()).mapToObj(i -> (Element) all.item(i))
        .filter(rect -> rect.getAttribute("class").equals(style)).toList();
  }

  private static double number(Element element, String name) {
    return Double.parseDouble(element.getAttribute(name));
  }
}
