package rungbook.pack.onefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import rungbook.browser.Browser;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/** The library in one file on a phone of 360 px: search, hand-over, record, and no scripts. */
@Tag("browser")
class LibraryInBrowserTest {

  /** Hidden steps would be looked at for minutes. */
  private static final String HIDDEN_AWAY = "document.querySelectorAll('.tree .page:not(.on)')"
      + ".forEach(hidden => hidden.remove())";

  @TempDir
  private static Path folder;

  private static Browser browser;
  private static String page;

  @BeforeAll
  static void start() throws IOException {
    page = Files.write(folder.resolve("trees.html"), Libraries.starters().bytes()).toUri().toString();
    browser = Browser.start().networkCut().size(360, 740);
  }

  @AfterAll
  static void close() {
    browser.close();
  }

  @AfterEach
  void on() {
    browser.scriptsOn();
  }

  private static void open(String anchor) {
    browser.open("about:blank").open(page + anchor);
  }

  private static String hash() {
    return (String) browser.run("return location.hash");
  }

  private static void tool(String words) {
    browser.find(".sofar summary").click();
    browser.visible(".menu button").stream().filter(button -> button.getText().startsWith(words)).findFirst()
        .orElseThrow().click();
  }

  private static List<String> listed() {
    return browser.visible(".trees b").stream().map(WebElement::getText).toList();
  }

  /** A way to another tree: the page that it is on, its address, and the titles of both trees. */
  private static List<String> handOver() {
    ShortAnchors anchors = new ShortAnchors(Libraries.trees());
    for (Tree tree : Libraries.trees()) {
      for (Step step : tree.steps()) {
        for (Way way : step.ways()) {
          if (way.target() instanceof Target.ToTree to) {
            return List.of(anchors.of(tree.id(), step.id()),
                "#" + to.step().map(id -> anchors.of(to.tree(), id)).orElseGet(() -> anchors.first(to.tree())),
                tree.title(), Libraries.tree(to.tree()).title());
          }
        }
      }
    }
    throw new AssertionError("no tree hands over");
  }

  private static void follow(String address) {
    browser.run("const hold = document.querySelector('.on .hold'); if (hold && hold.offsetHeight) hold.click();"
        + "document.querySelector('.page.on .ways a[href=\"' + arguments[0] + '\"]').click()", address);
  }

  @Test
  void handOverKeepsTheRecordAndBackReturns() {
    open("");
    List<String> over = handOver();
    open("#" + over.get(0));
    follow(over.get(1));
    assertEquals(over.get(1), hash());
    assertEquals(over.get(3), browser.run("return document.querySelector('.tree').dataset.title"));
    assertEquals(true, browser.run("return document.querySelector('.page.on').matches('.step')"), "no page before it");
    assertTrue(browser.find(".sofar summary").getText().startsWith("1 done"));
    browser.run("history.back()");
    browser.until("document.querySelector('.tree').dataset.title === '" + over.get(2).replace("'", "\\'") + "'");
    assertEquals("#" + over.get(0), hash());
    assertTrue(browser.find(".sofar summary").getText().startsWith("0 done"));
    browser.run("history.forward()");
    browser.until("document.querySelector('.sofar summary').textContent.startsWith('1 done')");
    browser.run("location.reload()");
    browser.until("document.querySelector('.page.on')");
    browser.until("document.querySelector('.sofar summary').textContent.startsWith('1 done')");
    follow((String) browser.run("return document.querySelector('.page.on .ways a').getAttribute('href')"));
    tool("Field record");
    browser.find("details:has(> pre) > summary").click();
    String record = browser.find(".record pre").getText();
    assertTrue(record.indexOf(over.get(2)) < record.indexOf(over.get(3)) && record.contains(over.get(2)), record);
    assertEquals(List.of(), browser.complaints());
  }

  @Test
  void searchAndButtonsFindTreesByComplaint() {
    open("");
    assertEquals(Libraries.trees().size(), listed().size());
    browser.find("input[type=search]").sendKeys("buzzing");
    assertEquals("Contactor buzzes or control voltage is low", listed().get(0));
    assertTrue(listed().size() < 5, listed().toString());
    browser.run("const i = document.querySelector('input[type=search]');"
        + "i.value = ''; i.dispatchEvent(new Event('input'))");
    WebElement stop = browser.visible(".symptoms button").stream().filter(one -> one.getText().equals("Does not stop"))
        .findFirst().orElseThrow();
    stop.click();
    assertEquals(List.of("Blower runs all the time", "Fan coil heat won't shut off", "Heat won't shut off",
        "Outdoor unit won't shut off"), listed());
    assertEquals("true", stop.getDomAttribute("aria-pressed"));
    stop.click();
    assertEquals(Libraries.trees().size(), listed().size());
    browser.visible(".trees .way").get(0).click();
    assertEquals("#blower-does-not-answer-fan-call", hash());
    assertTrue(browser.find(".page.on h2").getText().startsWith("Blower won't run"));
    browser.find(".page.on .begin").click();
    assertTrue(browser.find(".sofar summary").getText().startsWith("0 done"), "to start is no answer");
    tool("All trees");
    assertEquals(Libraries.trees().size(), listed().size());
  }

  @Test
  void addressSaysTreeAndStep() {
    open("#no-cooling-blower-runs--r-to-c-at-the-wall");
    assertEquals("R to C at the wall", browser.find(".page.on h2 span:last-child").getText());
    open("#no-cooling-blower-runs--no-such-step");
    assertEquals(true, browser.run("return document.querySelector('.page.on').matches('.list')"));
  }

  @Test
  void onlyTheTreeInUseIsLaidOut() {
    open("#no-cooling-blower-runs--r-to-c-at-the-wall");
    assertEquals(1L, browser.run("return document.querySelectorAll('.tree').length"));
    assertEquals(1, laidOut(".page"));
    tool("Whole procedure");
    assertEquals(1, laidOut(".tree"));
    assertTrue(laidOut(".page.step") > 100);
    assertFalse(browser.find(".list").isDisplayed());
  }

  private static long laidOut(String css) {
    return (long) browser.run("return [...document.querySelectorAll(arguments[0])]"
        + ".filter(e => e.getClientRects().length).length", css);
  }

  @Test
  void cautionThatAnotherTreeNamedStaysFolded() {
    open("");
    List<String> over = handOver();
    open("#" + over.get(0));
    browser.run("document.querySelectorAll('.page.on .caution').forEach(box => box.open = false)");
    follow(over.get(1));
    String again = (String) browser.run("""
        const page = new DOMParser().parseFromString(arguments[1], 'text/html').getElementById(arguments[0]);
        const before = new Set([...page.querySelectorAll('.caution p a')].map(a => a.hash));
        return [...document.querySelectorAll('.page.on:not(.live-line) .caution')].filter(box =>
          before.has(box.querySelector('p a').hash) && box.open).map(box => box.textContent).join();
        """, over.get(0), Libraries.text(Libraries.starters()));
    assertEquals("", again);
  }

  @Test
  void withoutScriptsItIsOneLongDocument() {
    open("");
    List<String> over = handOver();
    browser.scriptsOff();
    open("#" + over.get(0));
    assertEquals(Libraries.trees().size(), browser.visible(".trees .way").size());
    assertEquals(0, browser.all(".symptoms button").size());
    WebElement way = browser.find("[id='" + over.get(0) + "'] .ways a[href='" + over.get(1) + "']");
    way.click();
    assertEquals(over.get(1).substring(1), page(over.get(1)));
    WebElement bar = browser.all("[id=no-cooling-blower-runs] a.caution").get(0);
    bar.sendKeys(Keys.ENTER);
    assertNotEquals(over.get(1), browser.driver().getCurrentUrl().replaceAll(".*#", "#"));
    String caution = browser.driver().getCurrentUrl().replaceAll(".*#", "");
    assertTrue(browser.find("[id='" + caution + "'] .avoid").isDisplayed());
  }

  /** What the address names. */
  private static String page(String address) {
    return browser.driver().getCurrentUrl().endsWith(address) ? address.substring(1) : browser.driver().getCurrentUrl();
  }

  @Test
  void nothingIsInTheWayOfAnybody() {
    for (String anchor : List.of("", "#no-cooling-blower-runs", "#no-cooling-blower-runs--r-to-c-at-the-wall")) {
      for (Browser.Scheme scheme : Browser.Scheme.values()) {
        browser.scheme(scheme);
        open(anchor);
        browser.run(HIDDEN_AWAY);
        assertEquals(List.of(), browser.violations(), anchor);
        assertEquals(0, browser.sidewaysPixels(), anchor);
      }
    }
    browser.scheme(Browser.Scheme.LIGHT);
  }
}
