package rungbook.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.WebDriverWait;
import rungbook.browser.Browser;
import rungbook.pack.Verify;
import rungbook.store.Store;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Save;

/** What people come for, done in a browser. */
@Tag("browser")
@Tag("server")
@QuarkusTest
class JobTest {
  private static final String REST_OF_TREE = """
      measure: AC volts
      leads: R, C
      at: thermostat
      expect: 24 to 28 V
      cautions: live control voltage
      minutes: 1
      """;

  @TestHTTPResource("/")
  URL address;

  @Inject
  Store store;

  @TempDir
  Path downloads;

  private static Browser browser;

  @BeforeAll
  static void start() {
    browser = Browser.start();
  }

  @BeforeEach
  void takeAFreshTab() {
    browser.freshTab();
    browser.cdp("Browser.setDownloadBehavior", Map.of("behavior", "allow", "downloadPath", downloads.toString()));
  }

  @AfterAll
  static void stop() {
    browser.close();
  }

  @Test
  void fromTheFirstPageToAPackInThreeClicks() throws Exception {
    browser.size(360, 740).open(address.toString());
    browser.find(".rungs .name").click();
    browser.find(".actions .main").click();
    browser.find("a[download]").click();
    var pack = downloaded(".html");
    assertEquals("/tree/trees/" + pack.getFileName().toString().replaceFirst("html$", "md"),
        URI.create(browser.driver().getCurrentUrl()).getPath());
    assertInstanceOf(Verify.Verdict.Intact.class, Verify.of(Files.readAllBytes(pack)));
    assertEquals(1, browser.scriptsOff().open(pack).all("h1").size());
  }

  @Test
  void aPhoneOpensTheMapAtItsFirstStepAndFitsItWithoutScripts() {
    var open = address + "tree/trees/control-fuse-keeps-opening.md";
    browser.size(360, 740).open(open).until("document.querySelector('.mapframe.full')");
    assertTrue((Boolean) browser.run("const s = document.querySelector('.mapframe svg a').getBoundingClientRect();"
        + "const f = document.querySelector('.mapframe').getBoundingClientRect(); return s.left >= f.left && "
        + "s.right <= f.right && s.bottom <= f.bottom"));
    browser.scriptsOff().open(open);
    assertEquals(0L,
        browser.run("const f = document.querySelector('.mapframe'); return f.scrollWidth - f.clientWidth"));
  }

  @Test
  void aTreeIsWrittenFromNothingInTheEditorAndSaved() {
    browser.size(1280, 900).open(address + "new");
    browser.find("#title").sendKeys("Fan never rests");
    browser.find("#complaint").sendKeys("The fan runs all night");
    browser.find("#system option[value=split-cooling-gas-furnace]").click();
    browser.find("form .main").click();
    browser.until("document.getElementById('count').textContent === '(none)'");
    write(browserText().replace("look: status light lit\n", REST_OF_TREE)
        .replace("- yes: [Light is on](#light-is-on)", "- 24 to 28: [Light is on](#light-is-on)")
        .replace("- no: [", "- under 23: ["));
    browser.until("document.getElementById('problems').textContent.includes('23')");
    write(browserText().replace("- under 23: [", "- anything else: ["));
    browser.until("document.getElementById('count').textContent === '(none)'");
    save("Odalys Fernhollow", "First try");
    browser.until("document.getElementById('state').textContent === 'Saved as revision 1'");
    browser.find("#close").click();
    browser.until("document.querySelector('h1').textContent === 'Fan never rests'");
    browser.until("document.querySelector('a[download]') || void setTimeout(() => location.reload(), 200)");
    assertTrue(browser.find("a[download]").isDisplayed());
    assertEquals("Odalys Fernhollow", store.head(new DocumentPath("trees/fan-never-rests.md")).orElseThrow().author());
  }

  @Test
  void theEditorOffersTheWordsThatFit() {
    keep("trees/job-words.md", 0,
        "---\ntitle: W\ncomplaint: c\nsystem: split-cooling-gas-furnace\n---\n\n## One\n\n```check\nleads: \n```\n"
            + "\n- yes: \n\n## Two\n");
    browser.size(1280, 900).open(address + "edit/trees/job-words.md?line=10");
    browser.until("document.getElementById('count').textContent !== ''");
    keys(Keys.END);
    browser.find("#complete").click();
    browser.until("[...document.querySelectorAll('.cm-completionLabel')].some(label => label.textContent === 'C')");
    keys(Keys.ESCAPE);
    browser.open(address + "edit/trees/job-words.md?line=13");
    browser.until("document.getElementById('count').textContent !== ''");
    keys(Keys.END);
    browser.find("#complete").click();
    browser.until("[...document.querySelectorAll('.cm-completionLabel')].some(label => label.textContent === 'Two')");
    keys(Keys.ENTER);
    assertTrue(browserText().matches("(?s).*- yes: \\[(One|Two)]\\(#(one|two)\\).*"), browserText());
  }

  @Test
  void theLoserOfARaceSeesTheDifferenceAndSavesOnTop() {
    keep("trees/job-race.md", 0, "first text\n");
    browser.size(360, 740).open(address + "edit/trees/job-race.md");
    browser.until("document.getElementById('count').textContent !== ''");
    keep("trees/job-race.md", 1, "theirs\n");
    write("mine\n");
    save("Odalys", "");
    browser.until("document.getElementById('conflict').open");
    assertTrue(browser.find("#race .taken_out").getText().contains("theirs"));
    assertTrue(browser.find("#race .added").getText().contains("mine"));
    assertEquals(0L,
        browser.run("const box = document.getElementById('conflict'); return box.scrollWidth - box.clientWidth"));
    assertTrue((Boolean) browser
        .run("return document.getElementById('on-top').getBoundingClientRect().bottom <= innerHeight"));
    browser.screenshot(Path.of("target/screens/race-phone.png"));
    browser.find("#on-top").click();
    browser.until("document.getElementById('state').textContent === 'Saved as revision 3'");
    assertEquals("theirs\n", store.revision(new DocumentPath("trees/job-race.md"), 2).orElseThrow().text());
    assertTrue(store.head(new DocumentPath("trees/job-race.md")).orElseThrow().text().startsWith("mine"));
  }

  @Test
  void whatWasTypedAndNotSavedIsThereAfterTheWindowWasClosed() {
    keep("trees/job-kept.md", 0, "saved\n");
    browser.size(1280, 900).open(address + "edit/trees/job-kept.md");
    browser.until("document.getElementById('count').textContent !== ''");
    write("typed\n");
    browser.until("localStorage.getItem('rungbook:trees/job-kept.md') === 'typed\\n'");
    browser.run("window.onbeforeunload = null");
    browser.open("about:blank");
    browser.open(address + "edit/trees/job-kept.md");
    browser.until("document.getElementById('state').textContent.includes('not saved')");
    assertTrue(browserText().startsWith("typed"));
  }

  @Test
  void hostileTextRunsNowhere() {
    keep("trees/job-hostile.md", 0,
        "---\ntitle: \"<img src=x onerror=document.title='broken-in'>\"\ncomplaint: x\n---\n\n## A\n\n```check\n"
            + "look: light\n```\n\n"
            + "<img src=x onerror=\"document.title='broken-in'\"> <script>document.title='broken-in'</script> "
            + "[x](javascript:document.title='broken-in')\n\n- yes: [A](#a)\n");
    for (var page : new String[] {"", "tree/trees/job-hostile.md", "edit/trees/job-hostile.md?line=13",
        "history/trees/job-hostile.md"}) {
      browser.open(address + page);
      browser.until("document.readyState === 'complete'");
      if (page.startsWith("edit")) {
        browser.until("document.querySelector('#preview .step')");
      }
      assertTrue(browser.all("[href^='javascript:'], main script:not([src]), [onerror]").isEmpty(), page);
      assertTrue(!"broken-in".equals(browser.run("return document.title")), page);
    }
  }

  private String browserText() {
    return (String) browser.run("return document.querySelector('.cm-content').cmTile.view.state.doc.toString()");
  }

  private void write(String text) {
    browser.run("const view = document.querySelector('.cm-content').cmTile.view;"
        + "view.dispatch({changes: {from: 0, to: view.state.doc.length, insert: arguments[0]}})", text);
  }

  private void keys(CharSequence... keys) {
    browser.find(".cm-content").sendKeys(keys);
  }

  private void save(String author, String message) {
    browser.find("#save").click();
    var name = browser.find("#author");
    name.clear();
    name.sendKeys(author);
    browser.find("#message").sendKeys(message);
    new Actions(browser.driver()).click(browser.find("#saving button.main")).perform();
  }

  private void keep(String path, int basedOn, String text) {
    store.save(Save.written(new DocumentPath(path), basedOn, text.getBytes(StandardCharsets.UTF_8), "Tobin", ""));
  }

  private Path downloaded(String ending) {
    return new WebDriverWait(browser.driver(), Duration.ofSeconds(60)).until(any -> finished(ending));
  }

  // null while there is none: a browser writes under another ending first
  private Path finished(String ending) {
    try (var files = Files.list(downloads)) {
      return files.filter(file -> file.toString().endsWith(ending)).findFirst().orElse(null);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
