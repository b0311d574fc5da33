package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.WebElement;
import rungbook.browser.Browser;

/** Where a measurement is in the circuit, on a phone of 320 px. */
@Tag("browser")
class CircuitInBrowserTest {

  private static final String TREE = "no-cooling-blower-runs";

  @TempDir
  private static Path folder;

  private static Browser browser;

  private static String page;

  @BeforeAll
  static void start() throws IOException {
    page = Files.write(folder.resolve(TREE + ".html"), Samples.starter(TREE).bytes()).toUri().toString();
    browser = Browser.start().networkCut().size(320, 640);
  }

  @BeforeEach
  void fresh() {
    browser.scriptsOn().open("about:blank").open(page + "#is-the-thermostat-lit");
    browser.run("localStorage.clear(); history.replaceState(null, ''); location.reload()");
    browser.until("document.querySelector('.live .page.on')");
  }

  @AfterAll
  static void close() {
    browser.close();
  }

  private static void go(String step) {
    browser.run("location.hash = arguments[0]", step);
    browser.until("document.querySelector('.page.on').id === '" + step + "'");
  }

  private static void answer(int way) {
    browser.run("const dock = document.querySelector('.on .dock'), hold = dock.querySelector('.hold');"
        + "if (hold) hold.click(); dock.querySelectorAll('.ways a')[arguments[0]].click()", way);
  }

  private static List<String> suspects() {
    browser.run("document.querySelector('.on details.circuit').open = true");
    return browser.all(".on .suspects li").stream().map(WebElement::getText).toList();
  }

  private static int count() {
    return Integer.parseInt(browser.find(".on .circuit summary b").getText().replaceAll("\\D", ""));
  }

  /** What the circuit's text says: with 24 V out of the high pressure switch, it is not open. */
  @Test
  void suspectsShrinkWithEachAnswer() {
    go("high-pressure-switch-to-c");
    int before = count();
    assertTrue(suspects().get(0).startsWith("high pressure switch open"), suspects().toString());
    assertEquals(before, suspects().size());
    answer(0);
    assertEquals("low-pressure-switch-to-c", browser.run("return location.hash.slice(1)"));
    assertTrue(count() < before, count() + " after " + before);
    assertFalse(suspects().toString().contains("high pressure switch open"), suspects().toString());
  }

  /** A switch that no answer has cleared is dotted; once it is, it is drawn thick. */
  @Test
  void whatIsProvedGoodIsFirm() {
    go("high-pressure-switch-to-c");
    assertEquals("may", state("high pressure switch"));
    answer(0);
    assertEquals("firm", state("high pressure switch"));
    assertEquals("may", state("low pressure switch"));
    browser.run("history.back()");
    browser.until("document.querySelector('.page.on').id === 'high-pressure-switch-to-c'");
    assertEquals("may", state("high pressure switch"));
  }

  private static Object state(String part) {
    return browser.run("return [...document.querySelectorAll('g[data-f]')].find(one =>"
        + " one.textContent === arguments[0]).className.baseVal", part.replace("pressure ", "pressure"));
  }

  @Test
  void pictureIsAsWideAsTheScreenAndSaysWhatItShows() {
    go("high-pressure-switch-to-c");
    suspects();
    WebElement picture = browser.find(".on .circuit svg");
    assertEquals("Rung 17, contactor: red lead on high pressure switch out, black lead on C at condenser.",
        picture.getAttribute("aria-label"));
    assertEquals(0, browser.sidewaysPixels());
    assertTrue(picture.getRect().getWidth() <= 320 && picture.getRect().getWidth() > 270);
    assertEquals(List.of(), browser.violations());
  }

  @Test
  void wholeCircuitIsAPressAwayAndBackLeadsToTheStep() {
    go("high-pressure-switch-to-c");
    suspects();
    browser.run("document.querySelector('.on .circuit a').click()");
    assertTrue(browser.find("section.circuit").isDisplayed());
    assertEquals(0, browser.sidewaysPixels());
    assertEquals(List.of(), browser.violations());
    browser.run("history.back()");
    browser.until("document.querySelector('.page.on').id === 'high-pressure-switch-to-c'");
  }

  @Test
  void withoutScriptsTheRungAndTheLikeliestAreThere() {
    browser.scriptsOff().open("about:blank").open(page + "#high-pressure-switch-to-c");
    browser.find("#high-pressure-switch-to-c .circuit summary").click();
    assertTrue(browser.find("#high-pressure-switch-to-c .circuit svg").isDisplayed());
    assertEquals(7, browser.all("#high-pressure-switch-to-c .suspects li").size());
    assertEquals(List.of(), browser.complaints());
  }
}
