package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.pack.style.Assets;
import rungbook.pack.page.Edition;
import rungbook.tree.Tree;

class PackTest {

  private static final String ENDING = """

      ## Fine

      ```finding
      healthy: yes
      ```
      """;

  static List<Pack> starters() {
    return Samples.starters();
  }

  @ParameterizedTest
  @MethodSource("starters")
  void sametereGivesSameBytes(Pack pack) {
    assertArrayEquals(pack.bytes(), Samples.madeAnew(pack.tree()).bytes());
  }

  /** The author's text has the hazards and the work between two actions; what is changed then is said after it. */
  @ParameterizedTest
  @MethodSource("starters")
  void theTextOfATaskComesBeforeWhatItChanges(Pack pack) {
    String page = new String(pack.bytes(), StandardCharsets.UTF_8);
    List<String> tasks = Pattern.compile("<section class=\"page step task\".*?</section>", Pattern.DOTALL).matcher(page)
        .results().map(task -> task.group()).filter(task -> task.contains("class=\"after\""))
        .filter(task -> task.contains("class=\"words do\"")).toList();
    assertFalse(tasks.isEmpty());
    tasks.forEach(task -> assertTrue(task.indexOf("class=\"words do\"") < task.indexOf("class=\"after\""), task));
  }

  @ParameterizedTest
  @MethodSource("starters")
  void everyStepHasItsAnchorAndEveryLinkAPlace(Pack pack) {
    String page = Samples.text(pack.inFolder());
    List<String> ids = all("id=\"([^\"]*)\"", page);
    assertEquals(ids.size(), new HashSet<>(ids).size(), "an id stands twice");
    Tree tree = Samples.STARTER.tree(pack.tree()).orElseThrow().tree();
    tree.steps().forEach(step -> assertTrue(ids.contains(step.id()), step.id()));
    List<String> links = all("href=\"#([^\"]*)\"", page);
    assertTrue(ids.containsAll(links), () -> links.stream().filter(link -> !ids.contains(link)).toList().toString());
  }

  @ParameterizedTest
  @MethodSource("starters")
  void asksForNothingOutside(Pack pack) {
    String page = Samples.text(pack.inFolder()).replace("xmlns='http://www.w3.org/2000/svg'", ""); // of pictures
    assertFalse(page.contains("http:") || page.contains("https:") || page.contains("url(") || page.contains("<base")
        || page.contains("<noscript"));
    all("src=\"([^\"]{0,20})", page).forEach(source -> assertTrue(source.startsWith("data:image/"), source));
    assertTrue(page.contains("default-src 'none'"));
  }

  @ParameterizedTest
  @MethodSource("starters")
  void beginsWithTheUsualCautionsAndTheDeferral(Pack pack) {
    String page = Samples.text(pack.inFolder());
    int deferral = page.indexOf("Local codes, the authority");
    int usual = page.indexOf("Before you start");
    assertTrue(0 < deferral && deferral < usual && usual < page.indexOf("class=\"page step"));
  }

  @Test
  void titleBlockSaysWhichEditionItIs() {
    var edition = new Edition(Optional.of("4"), Optional.of(LocalDate.of(2026, 3, 1)),
        Optional.of(LocalDate.of(2027, 3, 1)));
    String page = Samples.text(Samples.pack(sample("Measure it.", ""), edition).inFolder());
    assertTrue(page.contains("<dt>Revision</dt><dd>4</dd>"));
    assertTrue(page.contains("<dt>Released</dt><dd>March 1, 2026</dd>"));
    assertTrue(page.contains("<dt>Look for a newer one after</dt><dd>March 1, 2027</dd>"));
  }

  @Test
  void draftSaysThatItIsNotReleased() {
    assertTrue(Samples.text(Samples.starter("no-cooling-blower-runs").inFolder()).contains("<dd>not released</dd>"));
  }

  @Test
  void travelsAloneWithItsDigestInItsName() {
    Pack pack = Samples.starter("no-cooling-blower-runs");
    assertEquals("no-cooling-blower-runs.html", pack.inFolder().name());
    assertEquals("no-cooling-blower-runs-" + pack.digest().substring(0, 24) + ".html", pack.alone().name());
    assertTrue(Samples.text(pack.inFolder()).contains("<code class=\"digest\">" + pack.shortDigest() + "</code>"));
  }

  @Test
  void treeWithAWayToNowhereIsNoPack() {
    Tree broken = sample("Measure it.", "- over 28: [Nothing](#nothing)\n");
    assertThrows(IllegalArgumentException.class, () -> Samples.pack(broken, Edition.draft()));
  }

  @Test
  void wayOfEveryGoodReadingIsSaidInWords() {
    String page = Samples.text(Samples.pack(sample("", ""), Edition.draft()).inFolder());
    assertTrue(page.contains("<u>24 to 28 V</u> <em>as it should be here</em>"));
    assertTrue(page.contains("<u>under 24 V</u> </b>"));
  }

  @Test
  void findingThatGoesOnShowsItsWaysAndAnEndItsResult() {
    String page = Samples.text(Samples.starter("no-cooling-blower-runs").inFolder());
    int finding = page.indexOf("class=\"page step finding\" id=\"contactor\"");
    String contactor = page.substring(finding, page.indexOf("</section>", finding));
    assertTrue(contactor.contains("href=\"#make-it-dead-for-the-contactor"), contactor);
    assertTrue(page.contains("<div class=\"concluded\"><p>Result: <b>repaired and proved</b></p></div>"));
    assertTrue(page.contains("<p>Result: <b>left off and tagged</b></p><p>Tell: <b>a licensed electrician</b></p>"));
    assertTrue(page.contains("<p>Result: <b>referred</b></p><p>Call: <b>a senior technician</b></p>"));
  }

  @Test
  void wayThatTakesOtherReadingsTooIsNotMarked() {
    Tree tree = Samples.tree(check("", "- 22 or more: [Fine](#fine)\n- under 22: [Fine](#fine)\n") + ENDING);
    String page = Samples.text(Samples.pack(tree, Edition.draft()).inFolder());
    assertFalse(page.substring(page.indexOf("class=\"page step")).contains("<em>"));
  }

  @Test
  void goodReadingThatLeavesOnlyFaultsSaysSo() {
    Tree tree = Samples.tree(check("", "- 24 to 28: [Fine](#fine)\n- anything else: [Fine](#fine)\n")
        + ENDING.replace("healthy: yes", "fault: contactor coil open\nrefer: a senior technician"));
    String page = Samples.text(Samples.pack(tree, Edition.draft()).inFolder());
    assertTrue(page.contains("<em>as it should be here; the fault is elsewhere</em>"));
  }

  @Test
  void plainChapterIsWhereTheTextHasIt() {
    String page = Samples.text(Samples.pack(sample("", "\n## Why 24 V\n\nClass 2.\n"), Edition.draft()).inFolder());
    int step = page.indexOf("id=\"y-to-c\"");
    int chapter = page.indexOf("id=\":chapter-why-24-v\"");
    assertTrue(step < chapter && chapter < page.indexOf("id=\"fine\""));
  }

  @Test
  void circuitIsThereOnceAndOnlyWhereThereIsOne() {
    String page = Samples.text(Samples.starter("no-cooling-blower-runs").inFolder());
    assertEquals(1, all("<section class=\"page circuit\"", page).size());
    assertTrue(all("<details class=\"circuit\">", page).size() > 5);
    String without = Samples.text(Samples.pack(sample("", ""), Edition.draft()).inFolder());
    assertFalse(without.contains("<details class=\"circuit") || without.contains("page circuit"));
  }

  /** The limits that a phone with little storage and a slow link sets. */
  @Test
  void twentyStepsOfTextStaySmall() throws IOException {
    String text = rungbook.bench.Samples.tree(20).replace("minutes: 1\n",
        "minutes: 1\ncautions: line voltage, live control voltage, moving blower\n");
    Pack pack = Samples.pack(Samples.tree(text), Edition.draft());
    assertEquals(20, all("class=\"page step", Samples.text(pack.inFolder())).size() - 1);
    assertTrue(pack.bytes().length <= 120 * 1024, pack.bytes().length + " bytes");
    assertTrue(zipped(pack.bytes()) <= 35 * 1024, zipped(pack.bytes()) + " bytes");
    assertTrue(Assets.PACK_SCRIPT.getBytes(StandardCharsets.UTF_8).length <= 30 * 1024);
  }

  /** The same with the circuit of a starter system. Its limit is the figure and a fifteenth: not reached as a whole. */
  @Test
  void twentyStepsWithACircuitStaySmall() throws IOException {
    String text = rungbook.bench.Samples.tree(20)
        .replace("minutes: 1\n", "minutes: 1\ncautions: line voltage, live control voltage, moving blower\n")
        .replaceAll("leads: T\\d+, C\n", "leads: R, C\nat: thermostat\n")
        .replaceAll("fault: part \\d+ open", "fault: C cable open")
        .replaceFirst("\n---\n", "\nsystem: fan-coil-electric-heat\n---\n");
    Pack pack = Samples.pack(Samples.tree(text), Edition.draft());
    assertEquals(10, all("<details class=\"circuit\">", Samples.text(pack.inFolder())).size());
    assertTrue(pack.bytes().length <= 128 * 1024, pack.bytes().length + " bytes");
    assertTrue(zipped(pack.bytes()) <= 35 * 1024, zipped(pack.bytes()) + " bytes");
  }

  private static int zipped(byte[] bytes) throws IOException {
    var out = new ByteArrayOutputStream();
    try (var zip = new GZIPOutputStream(out)) {
      zip.write(bytes);
    }
    return out.size();
  }

  private static Tree sample(String prose, String more) {
    return Samples.tree(check(prose, "- 24 to 28: [Fine](#fine)\n- under 24: [Fine](#fine)\n" + more) + ENDING);
  }

  private static String check(String prose, String ways) {
    return """
        ---
        title: Sample
        complaint: Nothing yet
        ---

        ## Y to C

        ```check
        measure: AC volts
        leads: Y, C
        expect: 24 to 28 V
        ```

        %s

        %s""".formatted(prose, ways);
  }

  private static List<String> all(String pattern, String page) {
    return Pattern.compile(pattern).matcher(page).results()
        .map(found -> found.groupCount() > 0 ? found.group(1) : found.group()).toList();
  }
}
