package rungbook.web;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.browser.Browser.Scheme;
import rungbook.browser.Browser;
import rungbook.store.Histories;
import rungbook.store.Store;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Save;
import rungbook.web.record.PracticeSamples;
import rungbook.web.record.RecordSamples;

/**
 * Every page, light and dark, on a phone and on a desk. The pictures are left in {@code target/screens} to be looked
 * at.
 */
@Tag("browser")
@Tag("server")
@QuarkusTest
class EveryScreenTest {
  private static final Path PICTURES = Path.of("target/screens");
  private static final String BROKEN = """
      ---
      title: The tree with problems
      complaint: Something is wrong with it
      ---

      ## Light

      ```check
      look: light
      lok: fan
      ```

      - yes: [On](#on)

      ## On

      ```finding
      healthy: yes
      ```
      """;

  @TestHTTPResource("/")
  URL address;

  @Inject
  Store store;

  private record Screen(String name, String path) {
    @Override
    public String toString() {
      return name;
    }
  }

  private record Size(String name, int width, int height) {
    @Override
    public String toString() {
      return name;
    }
  }

  private record View(Screen screen, Size size, Scheme scheme) {
    String name() {
      return screen + "-" + size + "-" + scheme.name().toLowerCase(Locale.ROOT);
    }
  }

  private static final List<Size> SIZES = List.of(new Size("phone", 360, 740), new Size("desk", 1280, 900));
  private static final Map<View, Future<List<String>>> FAULTS = new ConcurrentHashMap<>();

  static Stream<Arguments> everyScreen() {
    return SIZES.stream().flatMap(EveryScreenTest::views)
        .map(view -> Arguments.of(view.screen(), view.size(), view.scheme()));
  }

  private static Stream<View> views(Size size) {
    return Arrays.stream(Scheme.values())
        .flatMap(scheme -> screens().stream().map(screen -> new View(screen, size, scheme)));
  }

  @ParameterizedTest(name = "{0}, {1}, {2}")
  @MethodSource("everyScreen")
  void everyPageIsFreeOfViolationsAndFits(Screen screen, Size size, Scheme scheme) throws Exception {
    if (FAULTS.isEmpty()) {
      keepSomethingToShow();
      SIZES.forEach(this::lookAtAll);
    }
    assertEquals(List.of(), Objects.requireNonNull(FAULTS.get(new View(screen, size, scheme))).get());
  }

  /** In a browser of its own, beside that of the other size: it is the browser that takes the time. */
  private void lookAtAll(Size size) {
    ExecutorService looking = Executors.newSingleThreadExecutor();
    Future<Browser> browser = looking.submit(Browser::start);
    views(size).forEach(view -> FAULTS.put(view, looking.submit(() -> look(
        browser.get().scheme(view.scheme()).size(size.width(), size.height()), view.screen(), view.name()))));
    looking.execute(() -> close(browser));
    looking.shutdown();
  }

  private static void close(Future<Browser> browser) {
    try {
      browser.get().close();
    } catch (ExecutionException | InterruptedException neverStarted) {
      throw new IllegalStateException(neverStarted);
    }
  }

  private static List<Screen> screens() {
    return List.of(new Screen("library", ""), new Screen("search", "?q=blower"),
        new Screen("nothing-found", "?q=zebra"),
        new Screen("tree", "tree/trees/no-cooling-blower-runs.md"),
        new Screen("tree-with-problems", "tree/trees/screens.md"),
        new Screen("editor", "edit/trees/no-cooling-blower-runs.md?line=40"),
        new Screen("editor-with-problems", "edit/trees/screens.md?line=9"),
        new Screen("coverage", "coverage"),
        new Screen("history", "history/trees/screens.md"), new Screen("shared", "shared"),
        new Screen("caution", "text/shared/cautions/gas.md"),
        new Screen("system", "text/shared/systems/heat-pump.md"),
        new Screen("system-read", "text/shared/systems/split-cooling-gas-furnace.md?read=true&red=Y+at+condenser"
            + "&black=C+at+condenser&set=thermostat+cooling&fault=Y+outdoor+cable+open#reading"),
        new Screen("new", "new"), new Screen("manage", "manage/shared/cautions/gas.md"),
        new Screen("rename", "manage/shared/cautions/gas.md?name=fuel+gas"),
        new Screen("revision", "revision/trees/screens.md?number=1"), new Screen("removed", "removed"),
        new Screen("reword", "reword?words=the+status+light&others=the+lamp"),
        new Screen("records", "records"), new Screen("record", "records/1"),
        new Screen("practice-results", "records/2"),
        new Screen("transfer", "transfer"), new Screen("verify", "verify"),
        new Screen("help", "help"), new Screen("proof", "proof/trees/no-cooling-blower-runs.md"),
        new Screen("proof-with-things-to-do", "proof/trees/screens-limit.md"),
        new Screen("missing", "tree/trees/nothing.md"));
  }

  private List<String> look(Browser browser, Screen screen, String name) {
    browser.requests();
    browser.complaints();
    browser.open(address + screen.path());
    if (screen.name().startsWith("editor")) {
      browser.until(
          "document.querySelector('.cm-content') && "
              + "!document.getElementById('problems').textContent.includes('Checking')"
              + " && document.getElementById('preview').textContent.length > 5");
    }
    browser.screenshot(PICTURES.resolve(name + ".png"));
    var faults = new ArrayList<>(violations(browser, name));
    if (browser.sidewaysPixels() > 0) {
      faults.add("scrolls sideways by " + browser.sidewaysPixels() + " px");
    }
    browser.complaints().stream().filter(line -> !line.contains("404")).forEach(faults::add);
    browser.requests().stream().filter(url -> !url.startsWith(address.toString()))
        .forEach(url -> faults.add("asked for " + url));
    return faults.stream().map(fault -> name + ": " + fault).toList();
  }

  /** Colors do not change with the width, and nothing else does with the scheme. */
  private static List<String> violations(Browser browser, String name) {
    return name.contains("desk") ? browser.violations()
        : name.endsWith("light") ? browser.violationsBesidesContrast() : List.of();
  }

  private void keepSomethingToShow() {
    var path = new DocumentPath("trees/screens.md");
    if (store.head(path).isPresent()) {
      return;
    }
    keepRecords();
    save(path, 0, BROKEN.replace("lok: fan\n", ""), "The first");
    save(path, 1, BROKEN, "With a slip of the pen");
    save(path, 1, BROKEN.replace("Something is wrong", "Another had it"), "Lost the race");
    assertTrue(Histories.all(store, path).size() >= 2);
    var buzzes = store.head(new DocumentPath("trees/contactor-buzzes-control-voltage-low.md")).orElseThrow().text();
    save(new DocumentPath("trees/screens-limit.md"), 0, buzzes.replace("- 23 to 30: [Open", "- 26 to 30: [Open")
        .replace("- 5 to 23: [Smell", "- 5 to 26: [Smell").replace("expect: 23 to 30", "expect: 26 to 30"),
        "With a limit among good readings");
  }

  /** The first ones of this library: their numbers are 1 and 2. */
  private void keepRecords() {
    given().contentType("application/json").body(RecordSamples.FULL).post("/api/records").then().statusCode(201);
    given().contentType("application/json").body(PracticeSamples.FULL).post("/api/records").then().statusCode(201);
  }

  private void save(DocumentPath path, int basedOn, String text, String message) {
    store.save(Save.written(path, basedOn, text.getBytes(StandardCharsets.UTF_8), "Odalys Fernhollow", message));
  }
}
