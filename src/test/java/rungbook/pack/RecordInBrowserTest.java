package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.WindowType;
import rungbook.browser.Browser;

/** The field record on a phone that keeps what it is told. */
@Tag("browser")
class RecordInBrowserTest {

  @TempDir
  private Path folder;

  private Browser browser;

  @BeforeEach
  void start() throws IOException {
    for (PackFile file : LibraryFolder.of(List.of(Samples.example(), Samples.starter("no-cooling-blower-runs")))) {
      Files.write(folder.resolve(file.name()), file.bytes());
    }
    browser = Browser.start().networkCut().size(360, 740);
  }

  @AfterEach
  void complainedOfNothing() {
    assertEquals(List.of(), browser.complaints());
    browser.close();
  }

  private void open(String tree, String step) {
    browser.open("about:blank").open(folder.resolve(tree + ".html").toUri() + (step.isEmpty() ? "" : "#" + step))
        .until("document.querySelector('.page.on')");
  }

  private void press(String words) {
    browser.run("[...document.querySelectorAll('button')].find(b => b.getClientRects().length && "
        + "b.textContent.startsWith(arguments[0])).click()", words);
  }

  private void way(int index) {
    browser.run("const hold = document.querySelector('.on .hold'); if (hold) hold.click();"
        + "document.querySelectorAll('.on .way')[arguments[0]].click()", index);
  }

  private void showRecord() {
    browser.run("[...document.querySelectorAll('.menu button')].find(b => b.textContent.startsWith('Field record')).click()");
  }

  private JsonNode json() throws JsonProcessingException {
    return new ObjectMapper().readTree((String) browser.run("return rungbook.share.json()"));
  }

  @Test
  void everyAnswerHasWhatAReaderNeeds() throws IOException {
    open("example", "t1-to-t2");
    browser.run("document.querySelector('.on .hold').click()");
    browser.find(".on .field input").sendKeys("198.5");
    browser.find(".points").click();
    JsonNode step = json().at("/steps/0");
    assertEquals("example", step.get("tree").asText());
    assertEquals("t1-to-t2", step.get("step").asText());
    assertEquals("5 T1 to T2", step.get("number").asText() + " " + step.get("title").asText());
    assertEquals("check", step.get("kind").asText());
    assertEquals("198.5 V", step.get("reading").asText() + " " + step.get("unit").asText());
    assertEquals("207 to 264 V", step.get("expected").asText());
    assertEquals("120 to 207 V", step.get("answer").asText());
    assertEquals(1, step.get("way").asInt());
    assertTrue(step.get("at").asText().matches("20\\d\\d-.*Z"));
    assertEquals(Samples.example().digest(), json().at("/packs/0/digest").asText());
    assertEquals("draft", json().at("/packs/0/revision").asText());
    assertTrue(json().at("/now/says").toString().contains("Fault: outdoor supply low"), json().toString());
  }
}
