package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungbook.browser.Browser;
import rungbook.pack.reading.ReadingZones;
import rungbook.pack.reading.VoltageBound;
import rungbook.pack.reading.Zone;
import rungbook.tree.Meter;
import rungbook.tree.Readings;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** The pack's script reads what people type as the table says, and sends every reading as {@link ReadingZones} do. */
@Tag("browser")
@Tag("slow")
class RoutingAgreementTest {

  /** Types each text into a check's field and answers with what was said of it and the numbers of the ways shown. */
  private static final String TYPE_ALL = """
      location.hash = arguments[0];
      dispatchEvent(new PopStateEvent('popstate'));
      const page = document.querySelector('.page.on'), input = page.querySelector('.reading input');
      return arguments[1].map(text => {
        input.value = text;
        input.dispatchEvent(new Event('input'));
        const shown = [...page.querySelectorAll('.ways a')].map((a, way) => a.matches('.points, .beside') ? way : -1);
        const said = page.querySelector('.told');
        return [said.className.replace('told', '').trim() || (said.textContent ? 'refused' : 'silent')]
          .concat(shown.filter(way => way >= 0)).join(' ');
      });""";

  @TempDir
  private Path folder;

  @Test
  void scriptReadsWhatPeopleType() throws IOException {
    Map<ReadingCases.Check, List<ReadingCases.Case>> byCheck = ReadingCases.all().stream()
        .collect(Collectors.groupingBy(ReadingCases.Case::check, LinkedHashMap::new, Collectors.toList()));
    try (Browser browser = Browser.start()) {
      for (var one : byCheck.entrySet()) {
        browser.open(Files.write(folder.resolve("cases.html"), one.getKey().pack().bytes()));
        List<String> texts = one.getValue().stream().map(ReadingCases.Case::typed).toList();
        List<String> said = ((List<?>) browser.run(TYPE_ALL, "read", texts)).stream().map(String::valueOf).toList();
        assertEquals(named(texts, one.getValue().stream().map(RoutingAgreementTest::expected).toList()),
            named(texts, said), one.getKey().toString());
      }
    }
  }

  private static String expected(ReadingCases.Case one) {
    String[] meaningAndWays = one.outcome().split(" ", 2);
    List<String> ways = meaningAndWays.length < 2 ? List.of() : List.of(meaningAndWays[1].split(" / "));
    return said(meaningAndWays[0], ways.stream().map(one.check().ways()::indexOf).toList());
  }

  private static String said(String meaning, List<Integer> ways) {
    return Stream.concat(Stream.of(meaning), ways.stream().sorted().map(String::valueOf))
        .collect(Collectors.joining(" "));
  }

  @Test
  void scriptAndJavaAgreeOnEveryStarterCheck() throws IOException {
    int checks = 0;
    try (Browser browser = Browser.start()) {
      for (Pack pack : Samples.starters()) {
        browser.open(Files.write(folder.resolve(pack.tree() + ".html"), pack.bytes()));
        for (Step.MeterCheck check : meterChecks(pack.tree())) {
          agree(browser, check, zones(pack.tree(), check), new Random(checks++));
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
    ReadingZones zones = zones(id, check);
    Readings readings = zones.readings();
    Set<String> texts = new LinkedHashSet<>();
    for (long count = readings.lowCount(); count <= readings.highCount(); count++) {
      texts.add(text(readings, count));
      texts.add(text(readings, count) + "5");
    }
    try (Browser browser = Browser.start()) {
      browser.open(Files.write(folder.resolve("one.html"), Samples.starter(id).bytes()));
      compare(browser, check, zones, List.copyOf(texts));
    }
  }

  private static void agree(Browser browser, Step.MeterCheck check, ReadingZones zones, Random random) {
    Readings readings = zones.readings();
    Set<String> texts = new LinkedHashSet<>(List.of("0", "-0.04", "-0.05", "0.049", "0.05", "999999999", "-999999999"));
    var counts = new ArrayList<Long>(List.of(readings.lowCount(), readings.highCount()));
    zones.all().stream().skip(1).forEach(zone -> counts.add(zone.from()));
    for (int i = 0; i < 100; i++) {
      counts.add(readings.lowCount() + (long) (random.nextDouble() * (readings.highCount() - readings.lowCount())));
    }
    for (long count : counts) {
      for (long near = count - 1; near <= count + 1; near++) {
        texts.addAll(List.of(text(readings, near), text(readings, near) + "4", text(readings, near) + "5",
            text(readings, near) + "49"));
      }
    }
    compare(browser, check, zones, texts.stream().filter(text -> text.matches("-?\\d{1,9}(\\.\\d{1,6})?")).toList());
  }

  private static void compare(Browser browser, Step.MeterCheck check, ReadingZones zones, List<String> texts) {
    List<String> meant = texts.stream().map(text -> said(zones, new BigDecimal(text))).toList();
    assertEquals(named(texts, meant), named(texts, (List<?>) browser.run(TYPE_ALL, check.id(), texts)), check.id());
  }

  private static String said(ReadingZones zones, BigDecimal reading) {
    Zone zone = zones.at(reading.divide(zones.readings().digit(), 0, RoundingMode.HALF_UP).longValueExact());
    return said(zone.meaning().code(), zone.ways());
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

  private static ReadingZones zones(String tree, Step.MeterCheck check) {
    Meter.Scale scale = tree(tree).meter().scale(check.quantity()).orElseThrow();
    OptionalDouble volts = Samples.facts(tree).voltages().at(tree(tree).steps().indexOf(check));
    return new ReadingZones(check, scale, VoltageBound.of(check, scale, volts, tree(tree).system()));
  }

  private static Tree tree(String id) {
    return Samples.STARTER.tree(id).orElseThrow().tree();
  }
}
