package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungbook.browser.Browser;
import rungbook.tree.Readings;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** The pack's script and {@link Readings} send every reading the same way. */
@Tag("browser")
class RoutingAgreementTest {

  /** Types each text into a check's field and answers with the way pointed to, -1 for none. */
  private static final String TYPE_ALL = """
      location.hash = arguments[0];
      dispatchEvent(new PopStateEvent('popstate'));
      const page = document.querySelector('.page.on'), input = page.querySelector('.reading input');
      return arguments[1].map(text => {
        input.value = text;
        input.dispatchEvent(new Event('input'));
        return [...page.querySelectorAll('.ways a')].findIndex(a => a.classList.contains('points'));
      });""";

  @TempDir
  private Path folder;

  @Test
  void scriptAndJavaAgreeOnEveryStarterCheck() throws IOException {
    int checks = 0;
    try (Browser browser = Browser.start()) {
      for (Pack pack : Samples.starters()) {
        browser.open(Files.write(folder.resolve(pack.tree() + ".html"), pack.bytes()));
        for (Step.MeterCheck check : meterChecks(pack.tree())) {
          agree(browser, check, readings(pack.tree(), check), new Random(checks++));
        }
      }
    }
    assertTrue(checks > 40, "only " + checks + " checks were compared");
  }

  /** Every reading that a meter of 6000 counts can show, and half a count between them. */
  @Test
  void scriptAndJavaAgreeOnEveryReadingOfOneCheck() throws IOException {
    String id = "outdoor-unit-silent-24-volts-present";
    Step.MeterCheck check = meterChecks(id).get(0);
    Readings readings = readings(id, check);
    Set<String> texts = new LinkedHashSet<>();
    for (long count = readings.lowCount(); count <= readings.highCount(); count++) {
      texts.add(text(readings, count));
      texts.add(text(readings, count) + "5");
    }
    try (Browser browser = Browser.start()) {
      browser.open(Files.write(folder.resolve("one.html"), Samples.starter(id).bytes()));
      compare(browser, check, readings, List.copyOf(texts));
    }
  }

  private static void agree(Browser browser, Step.MeterCheck check, Readings readings, Random random) {
    Set<String> texts = new LinkedHashSet<>(List.of("0", "-0.04", "-0.05", "0.049", "0.05", "999999999", "-999999999"));
    var counts = new ArrayList<Long>(List.of(readings.lowCount(), readings.highCount()));
    readings.spans().forEach(span -> counts.addAll(List.of(span.from(), span.to())));
    for (int i = 0; i < 100; i++) {
      counts.add(readings.lowCount() + (long) (random.nextDouble() * (readings.highCount() - readings.lowCount())));
    }
    for (long count : counts) {
      for (long near = count - 1; near <= count + 1; near++) {
        texts.addAll(List.of(text(readings, near), text(readings, near) + "4", text(readings, near) + "5",
            text(readings, near) + "49"));
      }
    }
    compare(browser, check, readings, texts.stream().filter(text -> text.matches("-?\\d{1,9}(\\.\\d{1,6})?")).toList());
  }

  private static void compare(Browser browser, Step.MeterCheck check, Readings readings, List<String> texts) {
    List<Long> ways = texts.stream().map(text -> way(readings, new BigDecimal(text))).toList();
    assertEquals(named(texts, ways), named(texts, (List<?>) browser.run(TYPE_ALL, check.id(), texts)), check.id());
  }

  private static long way(Readings readings, BigDecimal reading) {
    return readings.shown(reading).map(readings::wayOf).orElseGet(readings::wayOfOverload).orElse(-1);
  }

  private static List<String> named(List<String> texts, List<?> ways) {
    var named = new ArrayList<String>();
    for (int i = 0; i < texts.size(); i++) {
      named.add(texts.get(i) + " -> " + ways.get(i));
    }
    return named;
  }

  private static String text(Readings readings, long count) {
    String shown = readings.show(count);
    return shown.substring(0, shown.indexOf(' '));
  }

  private static List<Step.MeterCheck> meterChecks(String tree) {
    return tree(tree).steps().stream().filter(Step.MeterCheck.class::isInstance).map(Step.MeterCheck.class::cast)
        .toList();
  }

  private static Readings readings(String tree, Step.MeterCheck check) {
    return Readings.of(check, tree(tree).meter().scale(check.quantity()).orElseThrow());
  }

  private static Tree tree(String id) {
    return Samples.STARTER.tree(id).orElseThrow().tree();
  }
}
