package rungbook.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.browser.Browser;
import rungbook.browser.Browser.Scheme;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Save;
import rungbook.store.Store;

/** The button beside a problem makes its fix in the text, and the problem goes away. */
@Tag("browser")
@Tag("server")
@QuarkusTest
class EditorFixTest {

  private static final String TREE = """
      ---
      title: Slip of the pen
      complaint: something is wrong
      ---

      ## Fan

      ```check
      look: fan
      ```

      - yes: [On](#onn)
      - no: [On](#on)

      ## On

      ```finding
      healthy: yes
      ```
      """;

  @TestHTTPResource("/")
  URL address;

  @Inject
  Store store;

  @Test
  void oneClickWritesTheNearestName() {
    try (var browser = Browser.start()) {
      for (var scheme : Scheme.values()) {
        for (int width : List.of(360, 1280)) {
          // the editor keeps unsaved text by path
          String path = "trees/slip-" + width + "-" + scheme.name().toLowerCase(Locale.ROOT) + ".md";
          store.save(Save.written(new DocumentPath(path), 0, TREE.getBytes(StandardCharsets.UTF_8), "Odalys Fernhollow",
              "With a slip"));
          browser.scheme(scheme).size(width, 800).open(address + "edit/" + path)
              .until("document.querySelector('#problems .fix')");
          assertEquals("Write #on", browser.find("#problems .fix").getText());
          assertEquals(List.of(), width == 360 ? browser.violationsBesidesContrast() : browser.violations());
          assertEquals(0, browser.sidewaysPixels());
          browser.run("document.querySelector('#problems .fix').scrollIntoView({ block: 'center' })");
          browser.screenshot(Path.of("target/screens/editor-fix-" + width + "-" + scheme + ".png"));
          browser.run("document.querySelector('#problems .fix').click()");
          browser.until(
              "document.querySelector('.cm-content').textContent.includes('[On](#on)- no') && "
                  + "!document.querySelector('#problems .fix')");
          assertTrue(browser.find("#problems").getText().startsWith("No problems"),
              browser.find("#problems").getText());
        }
      }
    }
  }
}
