package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.NotFoundException;
import com.google.zxing.ReaderException;
import com.google.zxing.Result;
import com.google.zxing.ResultMetadataType;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import rungbook.browser.Browser;
import rungbook.web.record.FieldRecord;
import rungbook.web.record.Sent;

/** The ways of a record out of a phone: what leaves there is what the server reads. */
@Tag("browser")
class RecordOutInBrowserTest {

  /** Modules of version 13 on a side. */
  private static final int LARGEST = 69;

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
  void close() {
    phone.browser().close();
  }

  /** Twenty answers in two trees, with a job, a note and readings. */
  private void walk() {
    phone.open("example", "").ways(List.of(0, 0, 0)).way(1).type("3").way(1).way(0);
    phone.browser().until("document.title == 'No cooling, indoor blower runs' && " + PackOnPhone.HAS_RECORD);
    phone.way(0);
    while (phone.answered().size() < 20) {
      int before = phone.answered().size();
      phone.browser().run("""
          const hold = document.querySelector('.on .hold'), input = document.querySelector('.on .reading input');
          const ways = [...document.querySelectorAll('.on .way')];
          if (hold) hold.click();
          if (input) { input.value = '24.5'; input.oninput(); }
          const inside = ways.filter(a => a.getAttribute('href')[0] === '#');
          if (inside.length) (inside.find(a => a.matches('.points')) || inside[0]).click();
          else location.hash = '#:start';""");
      if (phone.answered().size() == before) {
        phone.browser().run("document.querySelector('.begin').click()");
      }
    }
    phone.showRecord().job("Hill farm, Ötztal, unit №2");
    phone.browser().find(".record textarea").sendKeys("Gate code with the neighbor. Filter was black.");
  }

  private FieldRecord sent() {
    return (FieldRecord) Sent.read(phone.record());
  }

  /** As ZXing, which has nothing of ours, reads them off the screen. */
  @Test
  void twentyAnswersAreInAtMostFourPicturesThatAnotherDecoderReads() throws IOException, ReaderException {
    walk();
    for (String scheme : List.of("day", "dim")) {
      phone.browser().run("document.querySelector('[value=" + scheme + "]').click()");
      phone.press("QR pictures");
      var texts = new ArrayList<String>();
      for (WebElement picture : phone.browser().all(".qr svg")) {
        Result result = decoded(picture);
        texts.add(result.getText());
        assertEquals("L", result.getResultMetadata().get(ResultMetadataType.ERROR_CORRECTION_LEVEL));
        Object side = phone.browser().run("return arguments[0].viewBox.baseVal.width", picture);
        assertTrue(((Number) side).intValue() - 8 <= LARGEST, side + " modules with the quiet zone");
      }
      assertTrue(texts.size() <= 4, texts.size() + " pictures");
      FieldRecord full = sent();
      FieldRecord read = (FieldRecord) Sent.read(String.join("\n", texts));
      assertEquals(20, read.steps().size());
      assertEquals(full.id() + full.job() + full.notes() + full.left(),
          read.id() + read.job() + read.notes() + read.left());
      for (int i = 0; i < 20; i++) {
        FieldRecord.Answered one = full.steps().get(i);
        FieldRecord.Answered other = read.steps().get(i);
        assertEquals(one.at().tree() + one.at().step() + one.way() + one.answer() + one.measured(),
            other.at().tree() + other.at().step() + other.way() + other.answer() + other.measured());
      }
      assertEquals(full.packs().get(1).digest().substring(0, 24), read.packs().get(1).digest());
    }
  }

  private Result decoded(WebElement picture) throws IOException, ReaderException {
    phone.browser().run("arguments[0].scrollIntoView({ block: 'center' })", picture);
    var image = ImageIO.read(new ByteArrayInputStream(picture.getScreenshotAs(OutputType.BYTES)));
    return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(new BufferedImageLuminanceSource(image))));
  }

  /** With the lengths at which each is just full: byte capacities of level L, ISO/IEC 18004 table 7 (from memory). */
  @Test
  void everyVersionIsReadByAnotherDecoder() throws NotFoundException, ReaderException, IOException {
    String qr = Files.readString(Path.of("src/main/scripts/qr.js")).replace("export ", "");
    List<Integer> capacities = List.of(17, 32, 53, 78, 106, 134, 154, 192, 230, 271, 321, 367, 425);
    for (int version = 1; version <= capacities.size(); version++) {
      String text = "RUNGBOOK {\"7\":[,] ~".repeat(25).substring(0, capacities.get(version - 1));
      Object rows = phone.browser().run(qr + "return qr(arguments[0]).map(r => r.map(Number).join(''))", text);
      List<String> lines = ((List<?>) rows).stream().map(String::valueOf).toList();
      assertEquals(17 + 4 * version, lines.size(), "version " + version);
      assertEquals(text, new QRCodeReader().decode(QrPicture.of(lines)).getText(), "version " + version);
    }
  }

  @Test
  void sharedTextIsForPeopleAndItsLastLineForTheServer() {
    walk();
    phone.browser().run("""
        window.shared = [];
        navigator.share = given => { shared.push(given); return Promise.resolve(); };""");
    phone.browser().run("history.back()");
    phone.browser().until("document.querySelector('.page.on').id != ':record'");
    phone.showRecord().press("Share");
    phone.browser().until("document.querySelector('.record .told').textContent == 'Shared.'");
    String text = (String) phone.browser().run("return shared[0].text");
    assertTrue(text.startsWith("FIELD RECORD, not closed\nJob: Hill farm, Ötztal, unit №2\n"), text);
    assertTrue(text.contains("way “contactor pulled in: no”") && text.contains("STILL OPEN, OFF OR SET"), text);
    assertTrue(text.contains("Step 4 Across the coil: 3 V (expected 20 to 30 V), way “anything else”"), text);
    assertEquals(sent().steps(), ((FieldRecord) Sent.read(text)).steps());
  }

  @Test
  void textCanBeSelectedAndCopied() {
    phone.open("example", "what-moves").way(0).showRecord().press("Copy");
    String copied = (String) phone.browser().run("return getSelection().toString()");
    String shown = (String) phone.browser().run("return document.querySelector('.record pre').textContent");
    assertEquals(shown.strip(), copied.strip());
    assertEquals(1, ((FieldRecord) Sent.read(copied)).steps().size());
  }

  @Test
  void aFileHasTheRecordAndANameOfItsOwn() {
    phone.open("example", "what-moves").way(0).showRecord().job("Hill farm / 2");
    phone.browser().run("""
        window.saved = [];
        HTMLAnchorElement.prototype.click = function () { saved.push([this.download]); };
        const made = URL.createObjectURL;
        URL.createObjectURL = blob => { saved.blob = blob; return made.call(URL, blob); };""");
    phone.press("Save as a file");
    String name = (String) phone.browser().run("return saved[0][0]");
    assertTrue(name.matches("record-Hill-farm-2-[0-9a-f]{4}\\.txt"), name);
    String text = (String) phone.browser().run("return saved.blob.text()");
    assertEquals("Hill farm / 2", ((FieldRecord) Sent.read(text)).job());
    assertFalse(phone.json().get("handedOut").asText().isEmpty());
  }
}
