package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import rungbook.browser.Browser;

/** The field for a reading, on a phone of 320 px. */
@Tag("browser")
@Tag("slow")
class ReadingInBrowserTest {

  @TempDir
  private static Path folder;

  private static Browser browser;

  private static String page;

  @BeforeAll
  static void start() throws IOException {
    page = Files.write(folder.resolve("example.html"), Samples.example().bytes()).toUri().toString();
    browser = Browser.start().networkCut();
  }

  @BeforeEach
  void phone() {
    browser.size(320, 640);
  }

  @AfterAll
  static void close() {
    browser.close();
  }

  private static void open(String step) {
    browser.open("about:blank").open(page + "#" + step);
    browser.run("const hold = document.querySelector('.page.on .hold'); if (hold) hold.click();");
  }

  private static void type(String reading) {
    WebElement input = browser.find(".page.on .reading input");
    input.clear();
    input.sendKeys(reading);
  }

  private static void press(String words) {
    browser.visible("button").stream().filter(button -> button.getText().startsWith(words)).findFirst().orElseThrow()
        .click();
  }

  private static String hash() {
    return (String) browser.run("return decodeURIComponent(location.hash.slice(1))");
  }

  private static String pointed() {
    return browser.find(".page.on .ways .points u").getText();
  }

  private static String told() {
    return browser.find(".page.on .told").getText();
  }

  /** The system's supply is 228 to 252 V. */
  @Test
  void typedReadingPointsToItsWay() {
    open("t1-to-t2");
    type("230");
    assertEquals("207 to 264 V", pointed());
    assertEquals("230 V: as it should be here (207 to 264 V).", told());
    type("190,5 v");
    assertEquals("120 to 207 V", pointed());
    assertEquals("190.5 V: not as it should be (207 to 264 V).", told());
    type("270");
    assertEquals("over 264 V", pointed());
    browser.find(".page.on .reading input").sendKeys(Keys.ENTER);
    assertEquals("supply-out-of-range", hash());
  }

  @Test
  void pointedWayComesFirstAndOnce() {
    open("t1-to-t2");
    type("270");
    List<WebElement> ways = browser.visible(".page.on .way");
    WebElement first = ways.stream().min(Comparator.comparingInt(way -> way.getLocation().y)).orElseThrow();
    assertTrue(first.getText().startsWith("over 264 V"), first.getText());
    assertEquals(1, ways.stream().filter(way -> way.getText().startsWith("over 264 V")).count());
  }

  @Test
  void readingThatCannotBeRightPointsNowhere() {
    open("t1-to-t2");
    for (String typed : List.of("1e3", "23 0", "-3", "300", "900", "OL")) {
      type(typed);
      assertTrue(browser.all(".points, .beside").isEmpty(), typed);
      assertFalse(told().isEmpty(), typed);
    }
    assertEquals("OL is more than this meter may read. Take the leads off.", told());
  }

  @Test
  void lineVoltageOnAControlWireLeavesNoWay() {
    open("across-the-coil");
    type("240");
    assertTrue(told().startsWith("DANGER") && told().contains("Hands out."), told());
    assertEquals(0, browser.visible(".page.on .way").size());
    assertEquals(320 - 10, browser.find(".page.on .told").getSize().width, "as wide as the page between its rails");
    type("24");
    assertEquals("20 to 30 V", pointed());
  }

  @Test
  void readingNearALimitIsReadAgain() {
    open("t1-to-t2");
    type("206.5");
    assertTrue(told().startsWith("206.5 V is as good as 207 V for this meter."), told());
    assertTrue(browser.all(".points").isEmpty());
    assertEquals(2, browser.all(".beside").size());
    press("Read again");
    assertEquals("First reading: 206.5 V", told());
    type("207");
    assertEquals("207 V is again as good as 207 V. This meter cannot tell these two ways apart.", told());
    assertEquals(2, browser.all(".points").size());
    browser.find(".points").click();
    browser.find(".sofar summary").click();
    press("Field record");
    browser.find("details:has(> pre) > summary").click();
    String record = browser.find(".record pre").getText();
    assertTrue(record.contains("T1 to T2: 206.5 V, again 207 V"), record);
  }

  @Test
  void readingInAnotherUnitIsConverted() {
    open("compressor-c-to-r");
    type("0.0195");
    press("Unit: Ω");
    assertEquals("under 20 Ω", pointed());
    type("0.0205");
    assertEquals("20 Ω or more", pointed());
    press("OL");
    assertEquals("20 Ω or more", pointed());
  }

  /** A phone's keyboard leaves about 400 px. */
  @Test
  void dangerIsInSightAboveTheKeyboard() {
    browser.size(360, 400);
    open("across-the-coil");
    type("240");
    var edges = (List<?>) browser.run(
        "const p = document.querySelector('.told p').getBoundingClientRect(); return [p.top, p.bottom]");
    assertTrue(((Number) edges.get(0)).doubleValue() > 0 && ((Number) edges.get(1)).doubleValue() <= 400,
        edges.toString());
  }

  @Test
  void everyAnswerHasNoViolationAndSevenToOne() {
    for (String light : List.of("day", "night", "dim")) {
      open("across-the-coil");
      browser.find("label:has([value=" + light + "])").click();
      for (String typed : List.of("24", "12", "19.9", "240", "40")) {
        type(typed);
        assertEquals(List.of(), browser.violations(), light + " " + typed);
      }
    }
  }
}
