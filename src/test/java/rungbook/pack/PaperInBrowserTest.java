package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.browser.Browser;

/** A pack as a browser prints it, on both usual sizes of sheet: ISO 216 A4 and ANSI/ASME Y14.1 A, which is Letter. */
@Tag("browser")
class PaperInBrowserTest {

  /** Of each check: its heading, and its ways as they are printed. */
  private static final String CHECKS = """
      const words = each => each.textContent.trim();
      return [...document.querySelectorAll('.step.check')].map(check => ({
        heading: words(check.querySelector('.n')) + ' ' + words(check.querySelector('.n + span')),
        ways: [...check.querySelectorAll('.way:has(i)')].map(way => words(way.querySelector('span')))
          .filter(way => !way.startsWith('↗')).map(way => '→ step ' + way)
      }))""";

  @TempDir
  private static Path folder;

  private Browser browser;

  @BeforeEach
  void start() {
    browser = Browser.start().networkCut();
  }

  @AfterEach
  void close() {
    browser.close();
  }

  private List<String> sheets(Pack pack, double widthInches, double heightInches) throws IOException {
    Path file = Files.write(folder.resolve("pack.html"), pack.bytes());
    browser.open("about:blank").open(file.toUri().toString());
    try (var printed = Loader.loadPDF(browser.printed(widthInches, heightInches))) {
      var sheets = new ArrayList<String>();
      for (int number = 1; number <= printed.getNumberOfPages(); number++) {
        var text = new PDFTextStripper();
        text.setSortByPosition(true);
        text.setStartPage(number);
        text.setEndPage(number);
        sheets.add(text.getText(printed).replaceAll("[\\s\u00a0]+", " "));
      }
      return sheets;
    }
  }

  @ParameterizedTest
  @CsvSource({"8.27, 11.69, no-cooling-blower-runs", "8.5, 11, outdoor-unit-does-not-stop"})
  void eachSheetSaysWhatItIsOfAndAMeasurementIsWithItsAnswers(double widthInches, double heightInches, String tree)
      throws IOException {
    Pack pack = Samples.starter(tree);
    List<String> sheets = sheets(pack, widthInches, heightInches);
    String digest = pack.shortDigest();
    for (int number = 1; number <= sheets.size(); number++) {
      String sheet = sheets.get(number - 1);
      assertTrue(sheet.startsWith(pack.title()), sheet);
      assertTrue(sheet.contains("Digest " + digest), sheet);
      assertTrue(sheet.contains("Revision draft"), sheet);
      assertTrue(sheet.contains("Released not released"), sheet);
      assertTrue(sheet.contains("page " + number + " of " + sheets.size()), sheet);
    }
    assertTrue(sheets.get(0).contains("All steps"), "the map is on the first sheet");
    assertTrue(sheets.get(sheets.size() - 1).contains("Sign-off"));
    assertEquals(List.of(), apart(sheets));
  }

  /** The checks that have a way on another sheet than their heading. */
  @SuppressWarnings("unchecked")
  private List<String> apart(List<String> sheets) {
    var apart = new ArrayList<String>();
    for (Map<String, Object> check : (List<Map<String, Object>>) browser.run(CHECKS)) {
      String heading = (String) check.get("heading");
      var ways = (List<String>) check.get("ways");
      // the list of steps on the first sheets has the heading, too, but no way in these words
      if (sheets.stream().filter(sheet -> sheet.contains(heading))
          .noneMatch(sheet -> ways.stream().allMatch(way -> sheet.lastIndexOf(way) > sheet.lastIndexOf(heading)))) {
        apart.add(heading + " " + ways);
      }
    }
    return apart;
  }
}
