package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.WebElement;
import rungbook.browser.Browser.Scheme;
import rungbook.browser.Browser;

/** Packs on a phone of 320 px, from a file, with the network cut. */
@Tag("browser")
@Tag("slow")
class PackInBrowserTest {

  private static final String TREE = "example";

  /** Ten of its own and the fragment's six; the step that takes the fragment in is no page. */
  private static final int STEPS = 16;

  @TempDir
  private static Path folder;

  private static Browser browser;

  @BeforeAll
  static void startOffline() throws IOException {
    var packs = new ArrayList<>(Samples.starters());
    packs.add(Samples.example());
    for (PackFile file : LibraryFolder.of(packs, List.of(), List.of())) {
      Files.write(folder.resolve(file.name()), file.bytes());
    }
    browser = Browser.start().networkCut();
  }

  @BeforeEach
  void phone() {
    browser.scriptsOn().scheme(Scheme.LIGHT).size(320, 640);
  }

  @AfterEach
  void askedForNothingAndComplainedOfNothing() {
    assertEquals(List.of(),
        browser.requests().stream().filter(url -> !url.startsWith("file:") && !url.startsWith("about:")).toList());
    assertEquals(List.of(), browser.complaints());
    browser.open("about:blank");
  }

  @AfterAll
  static void close() {
    browser.close();
  }

  private void open(String tree, String step) {
    browser.open("about:blank").open(folder.resolve(tree + ".html").toUri() + (step.isEmpty() ? "" : "#" + step));
  }

  private String hash() {
    return (String) browser.run("return decodeURIComponent(location.hash.slice(1))");
  }

  private void menu() {
    browser.find(".sofar summary").click();
  }

  private void hold() {
    browser.run("document.querySelector('.page.on .hold').click()");
  }

  private void type(String reading) {
    WebElement input = browser.find(".page.on .reading input");
    input.clear();
    input.sendKeys(reading);
  }

  @Test
  void findingIsReachedByLinksAloneWithScriptsOff() {
    browser.scriptsOff();
    for (Pack pack : Samples.starters()) {
      open(pack.tree(), "");
      browser.find(".begin").click();
      for (int steps = 0; browser.all(".finding:target").isEmpty() && !browser.all(".step:target").isEmpty(); steps++) {
        browser.find(".step:target .way").click();
        assertTrue(steps < 40, pack.tree() + ": no finding after 40 steps, last at " + hash());
      }
      assertTrue(browser.all(".step:target").isEmpty() || browser.find(".finding:target .concluded").isDisplayed(),
          pack.tree());
    }
  }

  @Test
  void withScriptsOffEveryStepIsThereToRead() {
    browser.scriptsOff();
    open(TREE, "");
    assertEquals(STEPS, browser.visible(".step").size());
    assertEquals(0, browser.visible("button, .reading").size());
  }

  @Test
  void nothingScrollsSidewaysAt320() {
    for (Pack pack : Samples.starters()) {
      browser.scriptsOff();
      open(pack.tree(), "");
      assertEquals(0, browser.sidewaysPixels(), pack.tree());
      browser.scriptsOn();
      open(pack.tree(), "");
      assertEquals(List.of(), browser.run("""
          const wide = [];
          for (const page of document.querySelectorAll('.page')) {
            location.hash = page.id;
            dispatchEvent(new PopStateEvent('popstate'));
            if (document.documentElement.scrollWidth > document.documentElement.clientWidth) wide.push(page.id);
          }
          return wide;"""), pack.tree());
    }
  }

  @Test
  void oneStepShowsAtATimeAndItsButtonsAreLarge() {
    open(TREE, "t1-to-t2");
    assertEquals(1, browser.visible(".page").size());
    browser.visible(".page.on .way, .page.on .hold")
        .forEach(button -> assertTrue(button.getSize().height >= 64, button.getText()));
    hold();
    type("230");
    for (WebElement way : browser.visible(".page.on .way, .page.on .field input")) {
      assertTrue(way.getSize().height >= 64, way.getText());
    }
    for (WebElement button : browser.visible("button, summary, .light label, .page.on .pad button")) {
      assertTrue(button.getSize().height >= 44 && button.getSize().width >= 44, button.getText() + button.getSize());
    }
  }

  @Test
  void backAndTheWaySoFarLeadWhereOneWas() {
    open(TREE, "");
    browser.find(".begin").click();
    browser.find(".page.on .way").click();
    browser.find(".page.on .way").click();
    assertEquals("what-moves", hash());
    browser.find(".back").click();
    browser.until("decodeURIComponent(location.hash) == '#open-the-unit'");
    browser.driver().navigate().back();
    browser.until("decodeURIComponent(location.hash) == '#call-for-cooling'");
    browser.driver().navigate().forward();
    browser.driver().navigate().forward();
    browser.until("decodeURIComponent(location.hash) == '#what-moves'");
    assertTrue(browser.find(".sofar summary").getText().startsWith("2 done"));
    menu();
    browser.until("document.querySelector('.walked button')").visible(".walked button").get(0).click();
    assertEquals("call-for-cooling", hash());
  }

  @Test
  void reloadForgetsNothing() {
    open(TREE, "what-moves");
    browser.find(".page.on .way").click();
    browser.driver().navigate().refresh();
    menu();
    assertTrue(
        browser.until("document.querySelector('.walked button')").find(".walked").getText().contains("What moves"));
  }

  @Test
  void everyLightHasNoViolationAndSevenToOne() {
    for (String light : List.of("day", "night", "dim")) {
      browser.scheme(light.equals("day") ? Scheme.LIGHT : Scheme.DARK);
      for (String step : List.of("", "across-the-coil", "what-moves", "make-it-dead--prove-it-dead",
          "supply-out-of-range", ":record")) {
        open(TREE, step);
        browser.run("document.querySelectorAll('details:not(.sofar)').forEach(e => e.open = true)");
        browser.find("label:has([value=" + light + "])").click();
        assertEquals(List.of(), browser.violations(), light + " " + step);
      }
    }
  }

  @Test
  void lightIsChosenWithScriptsOff() {
    browser.scriptsOff();
    open(TREE, "");
    browser.find("label:has([value=dim])").click();
    assertEquals("rgb(0, 0, 0)", ground());
  }

  @Test
  void lightIsRememberedWhereThereIsStorage() {
    open(TREE, "");
    Object day = ground();
    browser.find("label:has([value=dim])").click();
    assertEquals("rgb(0, 0, 0)", ground());
    open(TREE, "what-moves");
    assertEquals("rgb(0, 0, 0)", ground());
    open(TREE, "");
    browser.run("document.querySelector('[value=auto]').click()");
    assertEquals(day, ground());
  }

  private static Object ground() {
    return browser.run("return getComputedStyle(document.body).backgroundColor");
  }

  @Test
  void paperHoldsEveryStepAndNoButton() {
    open(TREE, "t1-to-t2");
    browser.print().size(768, 1000);
    assertEquals(STEPS, browser.visible(".step").size());
    assertEquals(0, browser.visible("button, .bar, .reading, .dock .begin").size());
    // folded or not; the driver takes what is in a closed bar for hidden, also where the style shows it
    assertEquals(List.of(), browser.run("return [...document.querySelectorAll('.cautions .avoid')]"
        + ".filter(each => !each.getClientRects().length).map(each => each.textContent)"));
    assertTrue(browser.find("dl.block").isDisplayed());
    assertEquals("\" → step \"",
        ((String) browser.run("return getComputedStyle(document.querySelector('.way i'), ':before').content"))
            .replace('\u00a0', ' '));
  }

  @Test
  void wayToAnotherTreeOpensItsPack() {
    open(TREE, "other-page");
    browser.find(".page.on .way").click();
    browser.until("document.title == 'No cooling, indoor blower runs'");
    browser.driver().navigate().back();
    browser.until("document.querySelector('.page.on h2')");
    assertTrue(browser.find(".sofar summary").getText().startsWith("1 done"));
  }

  @Test
  void indexFindsATreeByItsComplaint() {
    browser.open(folder.resolve("index.html"));
    assertEquals(0, browser.sidewaysPixels());
    browser.find("input[type=search]").sendKeys("thermostat BLANK");
    assertTrue(browser.visible(".trees .way").stream().anyMatch(tree -> tree.getText().contains("Thermostat blank")));
    assertTrue(browser.visible(".trees .way").size() < Samples.starters().size());
    assertEquals(List.of(), browser.violations());
    browser.scriptsOff().open(folder.resolve("index.html"));
    assertFalse(browser.visible(".trees .way").size() < Samples.starters().size());
  }
}
