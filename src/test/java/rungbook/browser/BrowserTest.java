package rungbook.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
      assertTrue(browser.violations().stream().anyMatch(line -> line.startsWith("image-alt")));
      assertTrue(browser.faintText().stream().anyMatch(line -> line.contains("Wide")));
    }
  }
}
