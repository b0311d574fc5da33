package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungbook.browser.Browser;

/** Text that wants to be code stays text, and a picture that wants to be code stays a picture. */
@Tag("browser")
class HostileTextTest {

  private static final String SVG = """
      <svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><script>top.bad = 1</script>
      <rect width="9" height="9" onload="top.bad = 1"/></svg>
      """;

  private static final String TREE = """
      ---
      title: "</title><script>window.bad = 1</script>"
      complaint: "\\" onmouseover=\\"window.bad = 1"
      ---

      <script>window.bad = 1</script>

      <img src=x onerror="window.bad = 1">

      ## Look <img src=x onerror=window.bad=1>

      ```check
      look: "<script>window.bad = 1</script>"
      at: "\\"><script>window.bad = 1</script>"
      ```

      [press](javascript:window.bad=1) <javascript:window.bad=1> [press](data:text/html,<script>window.bad=1</script>)
      ![two dots](pictures/bad.svg) </section></main><script>window.bad = 1</script>

      - <script>window.bad=1</script>: [Fine](#fine)
      - no: [Fine](#fine)

      ## Fine

      ```finding
      fault: "</script><script>window.bad = 1</script>"
      refer: "<code class=\\"digest\\">00000000</code>"
      ```
      """;

  private final Pack pack = Samples.pack(TREE, Map.of("trees/pictures/bad.svg", SVG.getBytes(StandardCharsets.UTF_8)));

  @TempDir
  private Path folder;

  @Test
  void nothingRunsInTheBrowser() throws IOException {
    Path file = Files.write(folder.resolve("sample.html"), pack.bytes());
    try (Browser browser = Browser.start()) {
      browser.open(file).until("document.readyState == 'complete'");
      browser.all("a").forEach(link -> browser.run("arguments[0].click()", link));
      assertEquals(null, browser.run("return window.bad"));
      assertEquals(List.of(), browser.requests().stream().filter(url -> !url.startsWith("file:")).toList());
      assertEquals(1L, browser.run("return document.scripts.length"));
      assertEquals(1L, browser.run("return document.images.length"));
    }
  }

  @Test
  void noLinkRunsCode() {
    String page = Samples.text(pack.inFolder()).toLowerCase(java.util.Locale.ROOT);
    assertFalse(page.contains("href=\"javascript:") || page.contains("href=\"data:"));
  }

  @Test
  void digestCannotBeForgedFromTheText() {
    assertTrue(Verify.of(pack.bytes()) instanceof Verify.Verdict.Intact);
  }
}
