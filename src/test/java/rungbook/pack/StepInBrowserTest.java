package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungbook.browser.Browser;

/** What the path walked changes at a step, on a phone of 360 px. */
@Tag("browser")
class StepInBrowserTest {

  @TempDir
  private static Path folder;

  private static Browser browser;

  private static String page;

  @BeforeAll
  static void start() throws IOException {
    page = Files.write(folder.resolve("example.html"), Samples.example().bytes()).toUri().toString();
    browser = Browser.start().networkCut().size(360, 740);
  }

  @AfterAll
  static void close() {
    browser.close();
  }

  private static void open(String step) {
    browser.open("about:blank").open(page + "#" + step);
  }

  private static boolean isOpen(String caution) {
    return Boolean.TRUE.equals(browser.run(
        "return document.querySelector('.on .caution:has([href$=\":" + caution + "\"])').open"));
  }

  private static void key(String key) {
    browser.visible(".on .pad button").stream().filter(one -> one.getText().equals(key)).findFirst().orElseThrow()
        .click();
  }

  @Test
  void cautionIsOpenUntilAStepOfThePathHasNamedIt() {
    open("open-the-unit");
    assertTrue(isOpen("line-voltage") && isOpen("moving-fan"));
    browser.find(".on .way").click();
    assertFalse(isOpen("line-voltage"));
    browser.find(".on .caution:has([href$=line-voltage]) summary").click();
    assertTrue(browser.find(".on .caution:has([href$=line-voltage]) .avoid").isDisplayed());
    browser.find(".on .way").click();
    assertTrue(isOpen("line-voltage"), "the leads touch line voltage at T1");
    assertFalse(isOpen("moving-fan"));
  }

  @Test
  void nothingIsAnsweredAtLineVoltageBeforeTheHold() {
    open("t1-to-t2");
    browser.find(".on .way").click();
    assertEquals("#t1-to-t2", browser.run("return location.hash"));
    browser.run("document.querySelector('.on .hold').click()");
    browser.find(".on .way").click();
    assertEquals("#make-it-dead--call-off", browser.run("return location.hash"));
  }

  @Test
  void minusIsRefusedWithTheReasonAndKeysWriteTheReading() {
    open("across-the-coil");
    browser.find(".on .field input").click();
    key("−");
    assertTrue(browser.find(".on .told").getText().startsWith("−: a minus sign here means"));
    key("−");
    key("2");
    key("4");
    assertEquals("20 to 30 V", browser.find(".on .points u").getText());
    key("⌫");
    key("⌫");
    key("jumps");
    assertTrue(browser.find(".on .told").getText().contains("jump") || !browser.all(".on .points").isEmpty());
  }

  @Test
  void fragmentBeginsOnItsFirstStepWithItsTitleAndItsOpening() {
    open("make-it-dead");
    assertEquals("Call off", browser.find(".page.on h2 span:last-child").getText());
    assertTrue(browser.find(".page.on .taken").getText().endsWith("Make it dead"));
    assertTrue(browser.find(".page.on .words").getText().contains("Nobody touches a part in the unit"));
  }

  @Test
  void pairsToProveDeadAreTheAuthorsAndCanBeTicked() {
    open("make-it-dead--prove-it-dead");
    assertEquals(6, browser.all(".page.on .pairs input").size());
    browser.run("document.querySelector('.page.on .pairs label').click()");
    assertEquals(1, browser.all(".page.on .pairs :checked").size());
  }
}
