package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.WindowType;
import rungbook.browser.Browser;

/** What a field record says, and how it goes on, on a phone that keeps what it is told. */
@Tag("browser")
class RecordInBrowserTest {

  @TempDir
  private static Path folder;

  private PackOnPhone phone;

  @BeforeAll
  static void write() throws IOException {
    PackOnPhone.write(folder);
  }

  @BeforeEach
  void start() {
    phone = new PackOnPhone(Browser.start(), folder);
  }

  @AfterEach
  void complainedOfNothing() {
    List<String> complaints = phone.browser().complaints();
    phone.browser().close();
    assertEquals(List.of(), complaints);
  }

  @Test
  void everyAnswerHasWhatAReaderNeeds() {
    phone.open("example", "t1-to-t2").type("198.5").way(1);
    JsonNode step = phone.json().at("/steps/0");
    assertEquals("example t1-to-t2", step.get("tree").asText() + " " + step.get("step").asText());
    assertEquals("5 T1 to T2", step.get("number").asText() + " " + step.get("title").asText());
    assertEquals("check", step.get("kind").asText());
    assertEquals("198.5 V", step.get("reading").asText() + " " + step.get("unit").asText());
    assertEquals("207 to 264 V", step.get("expected").asText());
    assertEquals("1 120 to 207 V", step.get("way").asText() + " " + step.get("answer").asText());
    JsonNode pack = phone.json().at("/packs/0");
    assertEquals(Samples.example().digest(), pack.get("digest").asText());
    assertEquals("draft", pack.get("revision").asText());
    assertEquals("Field meter", pack.get("meter").asText());
    assertTrue(phone.json().at("/now/says").toString().contains("Fault: outdoor supply low"));
    assertEquals(List.of(), RecordSchema.faults(phone.record()));
  }

  @Test
  void readingNearALimitIsKeptWithTheOneBefore() {
    phone.open("example", "t1-to-t2").type("207").press("Read again").type("206").way(1);
    assertEquals("207 V, 206", phone.json().at("/steps/0/first").asText() + ", "
        + phone.json().at("/steps/0/reading").asText());
  }

  @Test
  void recordGoesOnInTheNextTreeWithItsJob() {
    phone.open("example", "").way(0).showRecord();
    assertEquals("Nothing is recorded yet.", phone.text(".record p"));
    phone.browser().run("history.back()");
    phone.browser().until("document.querySelector('.page.on').id == 'call-for-cooling'");
    phone.way(0).showRecord().job("Hill farm, unit 2");
    String id = phone.json().get("id").asText();
    phone.browser().run("history.back()");
    phone.browser().until("document.querySelector('.page.on').id == 'open-the-unit'");
    phone.ways(PackOnPhone.TO_THE_OTHER);
    phone.browser().until("document.title == 'No cooling, indoor blower runs' && " + PackOnPhone.HAS_RECORD);
    assertEquals(id, phone.json().get("id").asText());
    assertEquals("Hill farm, unit 2", phone.json().get("job").asText());
    assertFalse(((String) phone.browser().run("return location.href")).contains("~"), "storage has it");
    phone.way(0).way(0);
    assertEquals(List.of("example/call-for-cooling", "example/open-the-unit", "example/what-moves",
        "example/across-the-coil", "example/other-page", PackOnPhone.OTHER + "/call-for-cooling"), phone.answered());
    assertEquals(List.of(), RecordSchema.faults(phone.record()));
    assertTrue(phone.text(".sofar summary").startsWith("6 done"));
  }

  @Test
  void jobThatIsNotClosedIsOfferedAndANewOneLeavesItAlone() {
    phone.open("example", "").way(0).way(0).way(0);
    String first = phone.json().get("id").asText();
    phone.browser().driver().switchTo().newWindow(WindowType.TAB);
    phone.open("example", "").press("Start new").way(0).way(0);
    assertNotEquals(first, phone.json().get("id").asText());
    phone.browser().driver().switchTo().newWindow(WindowType.TAB);
    phone.open("example", "").browser().until("document.querySelectorAll('.resume p').length == 2");
    phone.browser().run("document.querySelectorAll('.resume button')[1].click()");
    assertEquals(first, phone.json().get("id").asText());
    assertEquals("what-moves", phone.step());
    assertTrue(phone.text(".sofar summary").startsWith("2 done"));
  }

  @Test
  void jobGoesOnInTheTreeWhereItWas() {
    phone.open("example", "other-page").way(0);
    phone.browser().until("document.title == 'No cooling, indoor blower runs' && " + PackOnPhone.HAS_RECORD);
    phone.way(0).way(0);
    phone.browser().driver().switchTo().newWindow(WindowType.TAB);
    phone.open("example", "").press("Go on");
    phone.browser().until("document.title == 'No cooling, indoor blower runs' && " + PackOnPhone.HAS_RECORD);
    assertEquals("is-the-thermostat-lit", phone.step());
    assertEquals(2, phone.answered().size());
  }

  @Test
  void twoTabsOfOneRecordWriteOverNothing() {
    phone.open("example", "").way(0).way(0);
    String first = phone.browser().driver().getWindowHandle();
    phone.browser().driver().switchTo().newWindow(WindowType.TAB);
    phone.open("example", "").press("Go on").way(0);
    String id = phone.json().get("id").asText();
    phone.browser().driver().switchTo().window(first);
    phone.way(0).way(0);
    assertNotEquals(id, phone.json().get("id").asText());
    assertEquals(id, phone.json().get("from").asText());
    phone.browser().driver().switchTo().newWindow(WindowType.TAB);
    phone.open("example", "").browser().until("document.querySelectorAll('.resume p').length == 2");
  }

  @Test
  void answerThatWasTakenBackIsKept() {
    phone.open("example", "what-moves").way(0);
    phone.browser().driver().navigate().back();
    phone.browser().until("document.querySelector('.page.on').id == 'what-moves'");
    phone.way(1);
    assertEquals("contactor pulled in: no", phone.json().at("/steps/0/answer").asText());
    assertEquals("contactor pulled in: yes", phone.json().at("/undone/0/answer").asText());
    assertEquals(1, phone.json().get("steps").size());
  }

  @Test
  void recordIsNotClosedBeforeWhatIsOpenWasSaid() {
    phone.open("example", "").way(0).way(0).way(0).showRecord();
    assertEquals("[\"thermostat at cooling\",\"electrical cover off\"]", phone.json().at("/steps/1/open").toString());
    assertTrue(phone.text(".still").contains("electrical cover off"));
    phone.press("Close the record");
    assertEquals(2, phone.browser().all(".panel .still input").size());
    phone.browser().run("document.querySelectorAll('.panel .still input')[0].click()");
    phone.press("Close it");
    assertEquals("Put it right, or write why it stays so: electrical cover off", phone.text(".panel .told"));
    assertFalse(phone.json().has("closed"));
    phone.browser().run("scrollTo(0, 0)");
    assertEquals(List.of(), phone.browser().violations());
    phone.browser().find(".panel .field input").sendKeys("Guard posted, the electrician comes at 3 PM");
    phone.press("Close it");
    assertTrue(phone.text(".record .state").startsWith("Closed"));
    assertEquals("[\"electrical cover off\"]", phone.json().get("left").toString());
    assertEquals(List.of(), RecordSchema.faults(phone.record()));
    phone.open("example", "");
    phone.browser().run("""
        return new Promise(done => {
          const asked = indexedDB.open('rungbook', 1);
          asked.onsuccess = () => {
            asked.result.transaction('records').objectStore('records').getAll().onsuccess = () => done(true);
          };
        });""");
    assertEquals(0, phone.browser().all(".resume").size(), "a closed job is not offered again");
  }

  @Test
  void whatAStepPutsRightIsOffTheListUnlessItFailed() {
    phone.open("example", "").way(0).way(0).way(0).way(1).type("3").way(1).way(0);
    phone.browser().until("document.title == 'No cooling, indoor blower runs' && " + PackOnPhone.HAS_RECORD);
    assertEquals("[\"thermostat at cooling\"]", phone.json().at("/steps/4/open").toString());
    phone.open("example", "make-it-dead--switch-off-and-lock").way(0);
    String open = phone.json().at("/steps/0/open").toString();
    assertTrue(open.contains("outdoor disconnect off"), open);
  }

  @Test
  void notesOnTheJobAndOnAnAnswerAreKept() {
    phone.open("example", "what-moves").way(0).showRecord();
    phone.browser().run("document.querySelector('.answers details').open = true");
    phone.browser().find(".answers input").sendKeys("Hums");
    phone.browser().find(".record textarea").sendKeys("Gate code with the neighbor");
    phone.browser().driver().navigate().refresh();
    assertEquals("Hums", phone.json().at("/steps/0/note").asText());
    assertTrue(phone.record().contains("Gate code with the neighbor"));
    assertEquals(List.of(), phone.browser().violations());
  }

  @Test
  void recordIsDeletedWithTheSecondPress() {
    phone.open("example", "what-moves").way(0).showRecord().press("Delete this record").press("Delete it for good");
    assertEquals(":start", phone.step());
    assertEquals(0L, phone.browser().run("return Object.keys(localStorage).filter(k => /record/.test(k)).length"));
  }
}
