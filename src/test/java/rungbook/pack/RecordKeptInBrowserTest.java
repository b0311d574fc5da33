package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.WindowType;
import rungbook.browser.Browser;

/** A field record on phones that end at once, keep nothing, or have no room. */
@Tag("browser")
@Tag("slow")
class RecordKeptInBrowserTest {

  private static final String NO_STORAGE = """
      for (const name of ['localStorage', 'indexedDB']) {
        Object.defineProperty(window, name, { get() { throw new DOMException('refused', 'SecurityError'); } });
      }""";

  private static final String FILL = """
      const asked = arguments[0];
      let size = 1 << 20;
      for (let n = 0; size >= asked; n++) {
        try { localStorage.setItem('filler' + n, 'x'.repeat(size)); } catch { size >>= 1; }
      }""";

  @TempDir
  private static Path folder;

  @TempDir
  private Path profile;

  private PackOnPhone phone;

  @BeforeAll
  static void write() throws IOException {
    PackOnPhone.write(folder);
  }

  private void start(Browser browser) {
    phone = new PackOnPhone(browser, folder);
  }

  private void beforeEachPage(String script) {
    phone.browser().cdp("Page.addScriptToEvaluateOnNewDocument", Map.of("source", script));
  }

  @AfterEach
  void close() {
    phone.browser().close();
  }

  /** At each step of a walk through two trees: what was answered a moment before is there again. */
  @Test
  void phoneThatEndsAtAnyStepLosesNoAnswer() {
    List<Integer> walk = List.of(0, 0, 1, 1, 0, 0, 0);
    for (int done = 0; done < walk.size(); done++) {
      start(Browser.startIn(profile));
      phone.open("example", "");
      if (done > 0) {
        phone.press("Go on").browser().until(PackOnPhone.HAS_RECORD);
        assertEquals(done, phone.answered().size(), "killed after answer " + done);
      }
      if (phone.step().equals(":start")) {
        phone.way(0);
      }
      phone.way(walk.get(done));
      if (done == 4) {
        phone.browser().until("document.title == 'No cooling, indoor blower runs' && " + PackOnPhone.HAS_RECORD);
      }
      // a person needs longer than this to take the battery out
      phone.browser().run("return new Promise(done => setTimeout(done, 300))");
      phone.browser().kill();
    }
    start(Browser.startIn(profile));
    phone.open("example", "").press("Go on").browser().until(PackOnPhone.HAS_RECORD);
    assertEquals(walk.size(), phone.answered().size());
    assertEquals(PackOnPhone.OTHER + "/is-the-thermostat-lit", phone.answered().get(6));
  }

  @Test
  void withoutStorageTheAddressHasTheRecordThroughReloadAndHandOver() {
    start(Browser.start());
    beforeEachPage(NO_STORAGE);
    phone.open("example", "").way(0).way(0).showRecord().job("Hill farm, Ötztal №2");
    assertTrue(phone.text(".record .told").startsWith("This phone keeps nothing for this page"));
    phone.browser().driver().navigate().refresh();
    assertEquals("Hill farm, Ötztal №2", phone.json().get("job").asText());
    phone.browser().run("history.back()");
    phone.browser().until("document.querySelector('.page.on').id == 'open-the-unit'");
    phone.ways(PackOnPhone.TO_THE_OTHER);
    phone.browser().until("document.title == 'No cooling, indoor blower runs' && " + PackOnPhone.HAS_RECORD);
    phone.way(0).way(0);
    assertEquals(6, phone.answered().size());
    String address = phone.browser().driver().getCurrentUrl();
    phone.browser().driver().switchTo().newWindow(WindowType.TAB);
    beforeEachPage(NO_STORAGE);
    phone.browser().open(address).until(PackOnPhone.HAS_RECORD);
    assertEquals(6, phone.answered().size());
    assertEquals("Hill farm, Ötztal №2", phone.json().get("job").asText());
    assertEquals("is-the-thermostat-lit", phone.step());
    assertEquals(List.of(), phone.browser().complaints());
  }

  @Test
  void sandboxedFrameKeepsTheRecordInItsAddress() throws IOException {
    start(Browser.start());
    Path outer = Files.writeString(folder.resolve("outer.html"),
        "<!doctype html><title>Mail</title>"
            + "<iframe sandbox=allow-scripts width=340 height=700 src=example.html></iframe>");
    phone.browser().open(outer);
    phone.browser().driver().switchTo().frame(0);
    phone.browser().until("document.querySelector('.page.on')");
    phone.way(0).way(0).way(0);
    assertEquals(2, phone.answered().size());
    phone.browser().run("location.reload()");
    phone.browser().until("document.querySelector('.page.on').id == 'what-moves' && " + PackOnPhone.HAS_RECORD);
    assertEquals(2, phone.answered().size());
    assertEquals(List.of(), phone.browser().complaints());
  }

  @Test
  void fullStorageLosesNoAnswer() {
    start(Browser.start());
    phone.open("example", "").way(0).way(0);
    phone.browser().run(FILL, 1);
    phone.way(0).way(1);
    assertTrue(phone.browser().driver().getCurrentUrl().contains("~"), "the address has what storage has no room for");
    phone.browser().driver().navigate().refresh();
    assertEquals(3, phone.answered().size());
    phone.browser().driver().switchTo().newWindow(WindowType.TAB);
    phone.open("example", "").press("Go on").browser().until(PackOnPhone.HAS_RECORD);
    assertEquals(3, phone.answered().size(), "the database has it too");
  }

  @Test
  void closedRecordsThatWereHandedOutGiveWay() {
    start(Browser.start());
    phone.open("example", "call-for-cooling").way(0).showRecord().press("Close the record");
    phone.browser().run("document.querySelectorAll('.panel .still input').forEach(box => box.click())");
    phone.press("Close it").press("Save as a file");
    String old = phone.json().get("id").asText();
    phone.open("example", "call-for-cooling").way(0);
    phone.browser().run(FILL, 1);
    phone.way(0);
    assertEquals(false, phone.browser().run("return location.hash.includes('~')"), "there is room again");
    assertEquals(null, phone.browser().run("return localStorage.getItem('rungbook-record-' + arguments[0])", old));
    assertEquals(2, phone.answered().size());
  }

  @Test
  void wipedStorageIsWrittenAgainWithAllOfIt() {
    start(Browser.start());
    phone.open("example", "").way(0).way(0);
    phone.browser().run("localStorage.clear()");
    phone.browser().cdp("Storage.clearDataForOrigin", Map.of("origin", "file://", "storageTypes", "indexeddb"));
    phone.way(0);
    phone.browser().driver().switchTo().newWindow(WindowType.TAB);
    phone.open("example", "").press("Go on").browser().until(PackOnPhone.HAS_RECORD);
    assertEquals(2, phone.answered().size());
  }

  /** Of what the browser counts as quota; storage by name and value has a limit of its own. */
  @Test
  void twoHundredKilobytesAreEnoughForALongJob() {
    start(Browser.start());
    phone.browser().cdp("Storage.overrideQuotaForOrigin", Map.of("origin", "file://", "quotaSize", 200 << 10));
    phone.open("example", "what-moves");
    for (int answers = 0; answers < 20; answers++) {
      phone.way(1);
      phone.browser().run("document.querySelector('.contents a[href$=what-moves]').click()");
    }
    assertEquals(20, phone.answered().size());
    phone.browser().driver().switchTo().newWindow(WindowType.TAB);
    phone.open("example", "").press("Go on").browser().until(PackOnPhone.HAS_RECORD);
    assertEquals(20, phone.answered().size());
    assertEquals(List.of(), phone.browser().complaints());
  }

  @Test
  void wrongClockBreaksNothing() {
    start(Browser.start());
    beforeEachPage("""
        const Real = Date;
        let now = Real.UTC(1970, 0, 3);
        window.Date = class extends Real {
          constructor(...given) { super(...(given.length ? given : [now -= 3600000])); }
          static now() { return now -= 3600000; }
        };""");
    phone.open("example", "what-moves").way(0).type("198.5").way(1);
    assertEquals(2, phone.answered().size());
    assertEquals(0, phone.json().at("/steps/1/minutes").asInt());
    assertEquals(List.of(), RecordSchema.faults(phone.record()));
    phone.showRecord();
    assertNotEquals("", phone.text(".answers"));
    assertEquals(List.of(), phone.browser().complaints());
  }
}
