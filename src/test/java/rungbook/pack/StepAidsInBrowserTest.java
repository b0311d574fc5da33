package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungbook.browser.Browser;

/** A step for the left hand, in forced colors, with text twice as large, and reached by a bare link. */
@Tag("browser")
class StepAidsInBrowserTest {

  private static final int PHONE_HEIGHT = 740;

  @TempDir
  private static Path folder;

  private Browser browser;
  private String page;

  @BeforeEach
  void start() throws IOException {
    page = Files.write(folder.resolve("example.html"), Samples.example().bytes()).toUri().toString();
    browser = Browser.start().networkCut().size(360, PHONE_HEIGHT);
  }

  @AfterEach
  void close() {
    browser.close();
  }

  private void open(String step) {
    browser.open("about:blank").open(page + "#" + step).until("document.querySelector('.page.on')");
  }

  private double number(String expression) {
    return ((Number) browser.run("return " + expression)).doubleValue();
  }

  private String style(String selector, String property) {
    return (String) browser.run("return getComputedStyle(document.querySelector(arguments[0]))[arguments[1]]", selector,
        property);
  }

  private double left(String selector) {
    return number("document.querySelector('" + selector + "').getBoundingClientRect().left");
  }

  @Test
  void leftHandTurnsBarKeysAndAnswersAroundAndIsKept() {
    open("across-the-coil");
    assertTrue(left(".bar .sofar") < left(".bar .light"));
    browser
        .run("[...document.querySelectorAll('.menu button')].find(b => b.textContent === 'For the left hand').click()");
    assertTrue(left(".bar .sofar") > left(".bar .light"));
    browser.find(".on .field input").click();
    assertTrue(left(".on .pad .k3") < left(".on .pad .k0"), "the narrow keys are away from the thumb");
    open("across-the-coil");
    assertTrue(left(".bar .sofar") > left(".bar .light"), "the choice lasts");
    assertEquals(0, browser.sidewaysPixels());
  }

  @Test
  void forcedColorsKeepFramesAndShapes() {
    browser.cdp("Emulation.setEmulatedMedia",
        Map.of("media", "", "features", List.of(Map.of("name", "forced-colors", "value", "active"))));
    open("t1-to-t2");
    assertEquals("double", style(".on.live-line", "borderLeftStyle"));
    assertEquals("double", style(".on .dock", "borderTopStyle"));
    assertEquals("solid", style(".on .strip", "borderTopStyle"));
    assertEquals("double", style(".on .caution.danger", "borderTopStyle"));
    assertNotEquals(style(".on .way u", "color"), style(".on", "backgroundColor"));
  }

  @Test
  void textTwiceAsLargeLosesNothingAndNeedsNoScrollingSideways() {
    for (String step : List.of("t1-to-t2", "across-the-coil", "make-it-dead--prove-it-dead")) {
      open(step);
      browser.run("document.documentElement.style.fontSize = '225%'; dispatchEvent(new Event('resize'))");
      assertEquals(0, browser.sidewaysPixels(), step);
      browser.run("scrollTo(0, 1e6)");
      assertTrue(
          number("[...document.querySelectorAll('.on .way')].pop().getBoundingClientRect().bottom") <= PHONE_HEIGHT,
          step + ": the last way can be reached");
      browser.run("document.querySelector('.on h2').scrollIntoView()");
      assertFalse(number("document.querySelector('.on h2').getBoundingClientRect().bottom") < 0, step);
    }
  }

  /** With every caution open, what to do is on the first screen, or the answer gives way to it. */
  @Test
  void bareLinkShowsWhatToDoAboveTheAnswer() {
    for (String step : List.of("t1-to-t2", "across-the-coil")) {
      open(step);
      assertTrue(number("document.querySelector('.on .measure').getBoundingClientRect().bottom") <= number(
          "document.querySelector('.on .dock').getBoundingClientRect().top"), step);
    }
  }

  @Test
  void cautionsAndTheWayOutNeedNoHold() {
    open("t1-to-t2");
    browser.find(".on .caution summary").click();
    assertEquals(false, browser.run("return document.querySelector('.on .caution').open"));
    open("make-it-dead--prove-it-dead");
    browser.run("document.querySelector('.on .way:not(.out)').click()");
    assertEquals("#make-it-dead--prove-it-dead", browser.run("return location.hash"));
    browser.run("document.querySelector('.on .way.out').click()");
    assertNotEquals("#make-it-dead--prove-it-dead", browser.run("return location.hash"));
  }
}
