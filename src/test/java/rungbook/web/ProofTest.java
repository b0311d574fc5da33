package rungbook.web;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.net.Socket;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.browser.Browser.Scheme;
import rungbook.browser.Browser;
import rungbook.store.Store;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Save;
import rungbook.web.pages.NewTexts;
import rungbook.web.service.LargeTree;

/** A proof where people meet it: on the tree's page, beside the text that is being written, and in JSON. */
@Tag("browser")
@Tag("server")
@QuarkusTest
class ProofTest {
  private static final Path PICTURES = Path.of("target/screens");
  private static final String BUZZES = "trees/contactor-buzzes-control-voltage-low.md";
  private static final String BLANK = "trees/nothing-runs-thermostat-blank.md";
  private static final String PROVED = "document.getElementById('provedcount').textContent.includes('faults found')"
      + " && !document.getElementById('proof').classList.contains('stale')";

  private static Browser browser;

  @TestHTTPResource("/")
  URL address;

  @Inject
  Store store;

  @BeforeAll
  static void start() {
    browser = Browser.start();
  }

  @BeforeEach
  void takeAFreshTab() {
    browser.freshTab();
  }

  @AfterAll
  static void stop() {
    browser.close();
  }

  @Test
  void aSavedTreeIsProvedInTheWordsOfTheCommandLine() {
    given().get("/api/proof/" + BUZZES).then().statusCode(200).contentType("application/json")
        .body("proofs[0].system", equalTo("split-cooling-gas-furnace"))
        .body("proofs[0].healthyCondemned", equalTo(0.0f))
        .body("proofs[0].cases.name", hasItem("transformer on wrong tap"))
        .body("proofs[0].checks.step", hasItem("r-to-c-with-no-call"));
    given().get("/api/proof/trees/no-such.md").then().statusCode(404);
  }

  @Test
  void aTextWithoutASystemIsNotProvedAndSaysSo() {
    live("trees/live.md",
        "---\ntitle: T\ncomplaint: C\n---\n\n## Light\n\n```check\nlook: light\n```\n\n- yes: [On](#on)\n"
            + "- no: [On](#on)\n\n## On\n"
            + "\n```finding\nhealthy: yes\n```\n")
        .statusCode(200).body("unproved", containsString("it names no system")).body("toDo", hasSize(0))
        .body("state.words", containsString("not proved"));
    live("trees/live.md", "").statusCode(200).body("unproved", not(equalTo("")));
    live("shared/cautions/gas.md", "x").statusCode(400);
  }

  @Test
  void aTreeThatGoesInACircleIsNotProvedEither() {
    live("trees/live.md",
        "---\ntitle: T\ncomplaint: C\nsystem: split-cooling-gas-furnace\n---\n\n## A\n\n```task\nset: thermostat "
            + "cooling\n```\n\n- done: [A](#a)\n")
        .statusCode(200).body("unproved", containsString("circle"));
  }

  @Test
  void thePageOfATreeWithoutASystemSaysThatItIsCheckedButNotProved() {
    store.save(Save.written(new DocumentPath("trees/unproved.md"), 0,
        NewTexts.tree("Unproved", "Nothing simulated", "").getBytes(StandardCharsets.UTF_8),
        "Odalys Fernhollow", "No system"));
    given().get("/tree/trees/unproved.md").then().statusCode(200).body(containsString("it is checked, but not proved"));
    given().get("/proof/trees/unproved.md").then().statusCode(200).body(containsString("it names no system"));
  }

  @Test
  void aLimitThatCondemnsHealthySystemsComesWithItsMendingEdits() {
    live(BUZZES, limitAt26()).statusCode(200)
        .body("toDo.what", hasItem("Move 26 to 22 V at `R to C with no call`."))
        .body("toDo.find { it.what.startsWith('Move 26') }.why", containsString("In a house with furnace supply"))
        .body("toDo.find { it.what.startsWith('Move 26') }.edits.size()", greaterThan(0))
        .body("state.words", matchesPattern("\\d errors?"));
    live(BUZZES, text(BUZZES)).statusCode(200).body("toDo", hasSize(0)).body("state.words", equalTo("Proved"));
  }

  @Test
  void manyTextsOfOneTreeAtOnceEachGetAnAnswerAndTheNewestIsProved() {
    var statuses = IntStream.range(0, 8)
        .mapToObj(n -> CompletableFuture
            .supplyAsync(() -> live(BUZZES, text(BUZZES) + "\n".repeat(n)).extract().statusCode()))
        .toList().stream().map(CompletableFuture::join).toList();
    assertTrue(Set.of(200, 409).containsAll(statuses), statuses.toString());
    assertTrue(statuses.contains(200), statuses.toString());
  }

  @Test
  void aDraftWhoseAskerHangsUpIsNotProvedAnyFurther() throws Exception {
    var slow = "{\"path\":\"trees/large.md\",\"text\":" + new ObjectMapper().writeValueAsString(LargeTree.TEXT) + "}";
    try (var socket = new Socket("127.0.0.1", address.getPort())) {
      var length = slow.getBytes(StandardCharsets.UTF_8).length;
      socket.getOutputStream().write(("POST /api/proof HTTP/1.1\r\nHost: 127.0.0.1\r\n"
          + "Content-Type: application/json\r\nContent-Length: " + length + "\r\n\r\n" + slow)
          .getBytes(StandardCharsets.UTF_8));
      Thread.sleep(1_000);
    }
    var from = System.nanoTime();
    live(BUZZES, text(BUZZES)).statusCode(200);
    assertTrue(System.nanoTime() - from < TimeUnit.SECONDS.toNanos(12), "the proof of 20 seconds went on");
  }

  @Test
  void movingALimitSaysHowManyWouldBeCondemnedAndOneClickMendsIt() {
    browser.size(1280, 900).open(address + "edit/" + BUZZES);
    browser.until(PROVED);
    assertFalse(browser.find("#proof").getText().contains("a good unit reads"), browser.find("#proof").getText());
    write(limitAt26());
    browser.until(PROVED + " && document.getElementById('proof').textContent.includes('a good unit reads')");
    var says = browser.find("#proof").getText();
    assertTrue(says.matches("(?s).*Move 26 to 22 V at R to C with no call\\..*In a house with furnace supply "
        + "\\d+\\.\\d V.*\\d+ % of good units go that way.*"), says);
    assertTrue(browser.find("#treestate b").getText().matches("\\d errors?"), "the window is split too");
    assertEquals(List.of(), browser.violations());
    browser.screenshot(PICTURES.resolve("editor-condemns.png"));
    browser.find("#proof .fix").click();
    browser.until(PROVED + " && !document.getElementById('proof').textContent.includes('a good unit reads')");
    browser.find("#undo").click();
    browser.until(PROVED + " && document.getElementById('proof').textContent.includes('a good unit reads')");
  }

  @Test
  void withoutTheCheckOnTheCommonWireItsFaultShowsUpAsMissed() {
    browser.size(360, 740).open(address + "edit/" + BLANK);
    browser.until(PROVED);
    assertFalse(browser.find("#proof").getText().contains("C cable open"), browser.find("#proof").getText());
    write(without(text(BLANK), "## R to Y at the thermostat"));
    browser.until(PROVED + " && document.getElementById('proof').textContent.includes('C cable open')");
    assertTrue(browser.find("#proof").getText().contains("Send C cable open to the finding that names it"),
        browser.find("#proof").getText());
    assertEquals(List.of(), browser.violations());
    browser.screenshot(PICTURES.resolve("editor-misses-phone.png"));
  }

  @Test
  void theTreePageShowsItsProofOnPhoneAndDeskLightAndDark() {
    var faults = new ArrayList<String>();
    for (var scheme : Scheme.values()) {
      for (var width : new int[] {360, 1280}) {
        browser.scheme(scheme).size(width, width == 360 ? 740 : 900).open(address + "tree/" + BUZZES);
        browser.until("document.querySelector('#proof .readings')");
        assertTrue(browser.find("#proof").getText().contains("no good unit gets a fault"));
        assertEquals("Proved", browser.find("#treestate b").getText());
        assertTrue(browser.find("#treetodo").getText().contains("Nothing"), browser.find("#treetodo").getText());
        assertTrue(browser.find(".mapframe").getText().contains(" %"), "the page's map says what passes each way");
        shoot("proof-" + width + "-" + scheme.name().toLowerCase(java.util.Locale.ROOT));
        // EveryScreenTest looks at the steps, which are half of the page; colors do not change with the width
        browser.run("document.querySelectorAll('section.step').forEach(step => step.remove())");
        faults.addAll(width == 360 ? browser.violationsBesidesContrast() : browser.violations());
        assertEquals(0, browser.sidewaysPixels());
      }
    }
    assertEquals(List.of(), faults);
  }

  @Test
  void withoutScriptsTheProofIsAPageOfItsOwn() {
    browser.scriptsOff().size(360, 740).open(address + "tree/" + BUZZES);
    browser.find("#proof a").click();
    assertEquals("Proof of Contactor buzzes or control voltage is low", browser.find("h1").getText());
    assertFalse(browser.all(".readings").isEmpty());
    assertEquals(0, browser.sidewaysPixels());
  }

  private static void shoot(String name) {
    for (var at : List.of("#proved", "#proof .arrivals", "#proof .limits", ".mapframe")) {
      browser.run("document.querySelector(arguments[0]).scrollIntoView()", at);
      browser.screenshot(PICTURES.resolve(name + at.replaceAll("\\W+", "-") + ".png"));
    }
  }

  private String limitAt26() {
    return text(BUZZES).replaceFirst("- 23 to 30: \\[Open the", "- 26 to 30: [Open the")
        .replaceFirst("- 5 to 23: \\[Smell", "- 5 to 26: [Smell");
  }

  private String text(String path) {
    return store.head(new DocumentPath(path)).orElseThrow().text();
  }

  private static String without(String text, String heading) {
    var from = text.indexOf(heading);
    return text.substring(0, from) + text.substring(text.indexOf("\n## ", from) + 1);
  }

  private static void write(String text) {
    browser.run("const view = document.querySelector('.cm-content').cmTile.view;"
        + "view.dispatch({ changes: { from: 0, to: view.state.doc.length, insert: arguments[0] } })", text);
  }

  private static ValidatableResponse live(String path, String text) {
    return given().contentType("application/json").body(Map.of("path", path, "text", text)).when().post("/api/proof")
        .then();
  }
}
