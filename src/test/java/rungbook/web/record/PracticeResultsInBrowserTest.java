package rungbook.web.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungbook.browser.Browser;
import rungbook.library.CompiledTree;
import rungbook.library.Library;
import rungbook.library.StarterLibrary;
import rungbook.library.practice.PracticePages;
import rungbook.pack.practice.PracticePage;
import rungbook.tree.Tree;

/** What a practice page hands out is read, as text and as QR pictures. */
@Tag("browser")
class PracticeResultsInBrowserTest {

  private static final String SYSTEM = "fan-coil-electric-heat";

  /** Presses a button, chooses in a list; the short form is caught on its way into the pictures. */
  private static final String HANDS = """
      const all = kind => [...document.querySelectorAll('#practice ' + kind)];
      const press = words => all('button').find(b => b.textContent.trim().startsWith(words)).click();
      const choose = (label, words) => {
        const list = all('label.field').find(l => l.firstChild.textContent === label).querySelector('select');
        list.value = [...list.options].find(o => o.textContent.startsWith(words)).value;
        list.dispatchEvent(new Event('change'));
      };
      const round = () => {
        choose('Walk to', 'fan coil');
        press('Open: ');
        choose('Red', 'R');
        choose('Black', 'C');
        press('Name it');
        choose('What is wrong?', 'transformer secondary open');
        press('That is it');
      };
      """;

  @TempDir
  private static Path folder;

  private static PracticePage page;
  private static Browser browser;

  @BeforeAll
  static void practice() throws IOException {
    Library library = StarterLibrary.LIBRARY;
    List<Tree> trees = library.trees().stream().map(CompiledTree::tree)
        .filter(tree -> tree.system().filter(system -> system.id().equals(SYSTEM)).isPresent()).toList();
    page = PracticePages.of(SYSTEM, trees, library.shared(), library.text()).orElseThrow();
    browser = Browser.start();
    browser.open(Files.write(folder.resolve(page.fileName()), page.bytes()));
    Object fault = browser.run("return JSON.parse(document.getElementById('data').content.textContent).names"
        + ".indexOf('transformer secondary open')");
    browser.run("location.hash = '9-7-2-" + fault + "';");
    browser.until("document.querySelector('.says')");
    browser.run(HANDS + "round(); press('Levels and exercises');");
    browser.run(HANDS + "press('1 '); round();");
    browser.run("""
        const box = document.querySelector('.results input');
        box.value = 'Odalys Fernhøllow';
        box.dispatchEvent(new Event('input'));""");
  }

  @AfterAll
  static void close() {
    browser.close();
  }

  private static String text() {
    return (String) browser.run(HANDS + "press('Copy'); return document.querySelector('.results pre').textContent;");
  }

  private static String shortForm() {
    return (String) browser.run(HANDS + """
        const stringify = JSON.stringify;
        let caught = '';
        JSON.stringify = what => (caught = stringify(what));
        press('QR pictures');
        JSON.stringify = stringify;
        return caught.replace(/[^\\x20-\\x7e]/g, c => '\\\\u' + (c.charCodeAt(0) + 65536).toString(16).slice(1));""");
  }

  /** Cut as the page cuts it, and read off in another order. */
  private static String readOff(String whole) {
    int count = (whole.length() + 399) / 400;
    int size = (whole.length() + count - 1) / count;
    return IntStream.range(0, count).map(i -> count - 1 - i).mapToObj(i -> "RUNGBOOK " + (i + 1) + "/" + count
        + " practice:" + whole.substring(i * size, Math.min(whole.length(), (i + 1) * size)))
        .collect(Collectors.joining("\n"));
  }

  @Test
  void whatIsSharedIsReadAndFitsTheSchema() throws IOException {
    String text = text();
    PracticeResults results = (PracticeResults) Sent.read(text);
    assertEquals("Odalys Fernhøllow", results.name());
    assertEquals(SYSTEM, results.system());
    assertEquals(page.digest(), results.digest());
    assertEquals(List.of(true, false), results.rounds().stream().map(PracticeResults.Round::isRight).toList());
    assertTrue(results.rounds().get(0).way().size() >= 2, text);
    assertEquals(List.of(), PracticeSamples.schema().validate(RecordText.json(text),
        InputFormat.JSON));
  }

  @Test
  void thePicturesSayTheSame() {
    String whole = shortForm();
    PracticeResults shown = (PracticeResults) Sent.read(readOff(whole));
    PracticeResults shared = (PracticeResults) Sent.read(text());
    assertEquals(shared.name(), shown.name());
    assertTrue(shared.digest().startsWith(shown.digest()));
    assertEquals(shared.sum(), shown.sum());
    assertEquals(shared.rounds().stream().map(round -> round.faults() + round.lasted() + round.exercise()).toList(),
        shown.rounds().stream().map(round -> round.faults() + round.lasted() + round.exercise()).toList());
  }
}
