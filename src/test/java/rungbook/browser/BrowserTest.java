package rungbook.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("browser")
class BrowserTest {

  @TempDir
  private Path folder;

  private Path page(String body) throws IOException {
    return Files.writeString(folder.resolve("page.html"),
        "<!doctype html><html lang=en><meta name=viewport content='width=device-width'><title>Page</title><main>"
            + body + "</main></html>");
  }

  @Test
  void pageScriptsStayOffWhenSwitchedOff() throws IOException {
    try (Browser browser = Browser.start()) {
      Path page = page("<h1 id=t>still</h1><script>document.getElementById('t').textContent='ran'</script>");
      assertEquals("ran", browser.open(page).find("#t").getText());
      assertEquals("still", browser.scriptsOff().open(page).find("#t").getText());
    }
  }

  @Test
  void seesSidewaysScrollingRequestsAndFaults() throws IOException {
    try (Browser browser = Browser.start()) {
      Path page = page("<h1 style='width:500px;color:#999'>Wide</h1><img src=missing.png>");
      browser.size(320, 600).open(page);
      assertTrue(browser.sidewaysPixels() > 100);
      assertTrue(browser.requests().stream().anyMatch(url -> url.endsWith("missing.png")));
      assertEquals(Set.of("image-alt"), rules(browser.violationsBesidesContrast()));
      assertEquals(Set.of("image-alt", "color-contrast"), rules(browser.violations()));
    }
  }

  /** #767676 on white is 4.54:1, #595959 is 7.00:1: the steps of gray that just meet 4.5 and 7. */
  @Test
  void contrastUnderSevenToOneIsAViolationInLargeTextToo() throws IOException {
    try (Browser browser = Browser.start()) {
      for (String tag : List.of("p", "h1")) {
        String text = "<h1>T</h1><" + tag + " style='color:%s'>Text</" + tag + ">";
        assertEquals(Set.of("color-contrast"), rules(browser.open(page(text.formatted("#767676"))).violations()), tag);
        assertEquals(Set.of(), rules(browser.open(page(text.formatted("#595959"))).violations()), tag);
      }
    }
  }

  private static Set<String> rules(List<String> violations) {
    return violations.stream().map(line -> line.substring(0, line.indexOf(':'))).collect(Collectors.toSet());
  }
}
