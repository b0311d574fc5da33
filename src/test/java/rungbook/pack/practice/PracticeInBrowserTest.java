package rungbook.pack.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungbook.browser.Browser;
import rungbook.browser.Browser.Scheme;
import rungbook.library.CompiledTree;
import rungbook.library.Library;
import rungbook.library.StarterLibrary;
import rungbook.library.practice.PracticePages;
import rungbook.tree.Tree;

/** The practice page as somebody uses it, by what is on the screen alone. */
@Tag("browser")
class PracticeInBrowserTest {

  private static final String SYSTEM = "fan-coil-electric-heat";

  /** What a person does: presses a button, chooses in a list, reads the display. */
  private static final String HANDS = """
      const all = kind => [...document.querySelectorAll('#practice ' + kind)];
      const press = words => all('button').find(b => b.textContent.trim().startsWith(words)).click();
      const choose = (label, words) => {
        const list = all('label.field').find(l => l.firstChild.textContent === label).querySelector('select');
        const option = [...list.options].find(o => o.textContent.startsWith(words));
        list.value = option.value;
        list.dispatchEvent(new Event('change'));
      };
      const display = () => document.querySelector('.display').textContent;
      const said = () => document.getElementById('practice').innerText;
      """;

  @TempDir
  private static Path folder;

  private static Browser browser;
  private static Path page;

  @BeforeAll
  static void makePage() throws IOException {
    Library library = StarterLibrary.LIBRARY;
    List<Tree> trees = library.trees().stream().map(CompiledTree::tree)
        .filter(tree -> tree.system().filter(system -> system.id().equals(SYSTEM)).isPresent()).toList();
    PracticePage made = PracticePages.of(SYSTEM, trees, library.shared(), library.text()).orElseThrow();
    page = Files.write(folder.resolve(made.fileName()), made.bytes());
    browser = Browser.start();
    browser.size(360, 740);
  }

  @AfterAll
  static void close() {
    browser.close();
  }

  private static Object hands(String script) {
    return browser.run(HANDS + script);
  }

  private static void begin(String code) {
    browser.open("about:blank").open(page.toUri() + "#" + code);
  }

  /** The number that an exercise has for a fault: its place among the page's names. */
  private static Object fault(String name) {
    return browser.run("return JSON.parse(document.getElementById('data').content.textContent).names.indexOf("
        + "arguments[0])", name);
  }

  private static void dealFault(String name) {
    browser.open(page);
    begin("9-7-1-" + fault(name));
  }

  @Test
  void anOpenTransformerIsFoundWithTheMeter() {
    dealFault("transformer secondary open");
    assertEquals("Open the access panel first.", hands("choose('Walk to', 'fan coil'); return display();"));
    assertEquals("0.0 V", hands("press('Open: '); choose('Red', 'R'); choose('Black', 'C'); return display();"));
    String done = (String) hands("press('Name it'); choose('What is wrong?', 'transformer secondary open');"
        + "press('That is it'); return said();");
    assertTrue(done.startsWith("Found"), done);
    assertTrue(done.contains("Panel opened with the power on"), done);
    assertTrue(done.contains("The shortest way of a tree"), done);
    assertTrue(done.contains("1 of 1 found"), done);
  }

  @Test
  void ohmsOnALiveCircuitAreAnUnsafeAct() {
    begin("4-11-1");
    assertEquals("LIVE", ((String) hands("""
        choose('Walk to', 'fan coil');
        press('Open: ');
        choose('Red', 'L1');
        choose('Black', 'ground');
        choose('Dial', 'Ohms');
        return display();""")).strip());
    assertEquals("L1, ground", hands("return all('select').slice(-2).map(list => list.selectedOptions[0].textContent)"
        + ".join(', ');"));
    String done = (String) hands("press('Name it'); all('select')[0].value = 1;"
        + "all('select')[0].dispatchEvent(new Event('change')); press('That is it'); return said();");
    assertTrue(done.contains("Measured live: ohms from L1 to ground"), done);
    assertTrue(done.contains("Left open: "), done);
  }

  @Test
  void theSameCodeIsTheSameExercise() {
    String deal = "return document.querySelector('.says').textContent + said().length;";
    begin("9-123-2");
    Object first = hands(deal);
    begin("9-123-2");
    assertEquals(first, hands(deal));
  }

  @Test
  void tenRoundsFromTheFirstLevelToTwoFaults() {
    for (int level = 1; level <= 10; level++) {
      begin(level + "-" + (40 + level) + "-1");
      hands("choose('Walk to', 'fan coil'); press('Open: '); choose('Red', 'R');"
          + "choose('Black', 'C');");
      Object asked = hands("press('Name it'); all('select').forEach((list, i) => { list.value = i + 1;"
          + "list.dispatchEvent(new Event('change')); }); const asked = all('select').length; press('That is it');"
          + "return asked;");
      assertEquals(level == 10 ? 2L : 1L, asked);
      String done = (String) hands("return said();");
      assertTrue(done.contains("It was: "), done);
    }
    assertEquals(List.of(), browser.complaints());
  }

  @Test
  void aReadingIsThereWithinAFrame() {
    begin("9-5-1");
    double millis = ((Number) hands("""
        choose('Walk to', 'fan coil');
        press('Open: ');
        choose('Black', 'C');
        const times = all('.tip:not(.far)').slice(0, 8).map((tip, i) => {
          const point = all('.tip:not(.far)')[i], start = performance.now();
          choose('Red', point.textContent.split(',')[0]);
          return performance.now() - start;
        }).sort((a, b) => a - b);
        return times[times.length >> 1];""")).doubleValue();
    assertTrue(millis < 100, millis + " ms on a machine that does other things too");
  }

  @Test
  void nobodyIsShutOut() {
    for (Scheme scheme : Scheme.values()) {
      browser.scheme(scheme);
      browser.open("about:blank").open(page);
      assertEquals(List.of(), browser.violations());
      begin("9-5-1");
      hands("choose('Walk to', 'fan coil'); press('Open: '); choose('Red', 'R'); choose('Black', 'C');");
      assertEquals(List.of(), browser.violations());
      assertEquals(0, browser.sidewaysPixels());
      hands("press('Name it'); choose('What is wrong?', 'transformer secondary open'); press('That is it');");
      assertEquals(List.of(), browser.violations());
    }
    browser.scheme(Scheme.LIGHT);
  }

  @Test
  void withoutScriptsItSaysWhyItNeedsThem() {
    browser.scriptsOff();
    browser.open("about:blank").open(page);
    boolean isSaid = browser.find("#plain").isDisplayed();
    browser.scriptsOn();
    assertTrue(isSaid);
    assertFalse(browser.open("about:blank").open(page).find("#plain").isDisplayed());
  }
}
