package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
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

/** Times that a pack keeps. The page's clock is the test's: it is set ahead, as after a phone's sleep. */
@Tag("browser")
class TimerInBrowserTest {

  private static final String TREE = """
      ---
      title: No heat
      complaint: The burners do not light.
      ---

      ## Let the gas clear

      ```task
      wait: 5 min
      ```

      Leave the door of the closet open.

      - waited: [Gas valve](#gas-valve)

      ## Gas valve

      ```check
      look: valve light
      lasts: 2 s
      ```

      - yes: [Works](#works)
      - no: [Valve](#valve)

      ## Works

      ```finding
      healthy: yes
      ```

      ## Valve

      ```finding
      fault: gas valve
      refer: a licensed gas fitter
      ```
      """;
  private static final String AHEAD = "const now = Date.now; Date.now = () => now() + %d * 1000; "
      + "document.dispatchEvent(new Event('visibilitychange'))";

  @TempDir
  private static Path folder;

  private Browser browser;
  private String page;

  @BeforeEach
  void start() throws IOException {
    page = Files.write(folder.resolve("timers.html"), Samples.pack(TREE, Map.of()).bytes()).toUri().toString();
    browser = Browser.start().networkCut().size(360, 740);
    open("let-the-gas-clear");
  }

  @AfterEach
  void close() {
    browser.close();
  }

  private void open(String step) {
    browser.open("about:blank").open(page + "#" + step).until("document.querySelector('.page.on .timer button')");
  }

  private void press() {
    browser.find(".page.on .timer button").click();
  }

  private String chip() {
    return browser.find(".chip").getText();
  }

  @Test
  void waitGoesOnFromStepToStepAndAfterTheTabWasClosed() {
    assertEquals("Start the 5 min", browser.find(".page.on .timer button").getText());
    press();
    assertTrue(chip().matches("4:5\\d|5:00"), chip());
    open("gas-valve");
    assertTrue(chip().matches("4:[45]\\d|5:00"), chip());
  }

  @Test
  void phoneThatSleptThroughTheEndSaysSo() {
    press();
    browser.run(AHEAD.formatted(301));
    assertEquals("5 min over", chip());
    assertEquals("5 min are over", browser.find(".page.on .timer button").getText());
    press();
    assertEquals("Start the 5 min", browser.find(".page.on .timer button").getText());
    assertEquals("", chip(), "nothing runs");
  }

  @Test
  void waitStopsWhenItIsPressedAgain() {
    press();
    press();
    assertEquals("", chip());
    open("let-the-gas-clear");
    assertEquals("", chip(), "nor after the page is opened again");
  }

  @Test
  void fewSecondsAreCountedFromAPress() {
    open("gas-valve");
    press();
    assertEquals("2 s from now", browser.find(".page.on .timer button").getText());
    browser.until("document.querySelector('.page.on .timer button').textContent.startsWith('Over')");
  }

  @Test
  void withoutScriptsTheTimesAreThere() {
    browser.scriptsOff().open(page);
    List<String> lines = browser.all(".timer").stream().map(line -> line.getText()).toList();
    assertEquals(List.of("Wait: 5 min", "It is there for only 2 s. Be ready before it begins."), lines);
  }

  @Test
  void nothingIsInTheWayOfThoseWhoSeeOrPressLess() {
    press();
    assertEquals(List.of(), browser.violations());
    assertEquals(0, browser.sidewaysPixels());
    browser.size(320, 600);
    assertEquals(0, browser.sidewaysPixels());
  }
}
