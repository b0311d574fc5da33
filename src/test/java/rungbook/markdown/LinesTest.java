package rungbook.markdown;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;

class LinesTest {

  private static Lines.Read read(String text) {
    Source source = new Source("x.md", text);
    return Lines.read(source, new Span(0, source.text().length()));
  }

  private static String only(String text) {
    Lines.Read read = read(text);
    assertEquals(List.of(), read.problems());
    assertEquals(1, read.entries().size());
    return read.entries().get(0).value();
  }

  private static List<String> codes(String text) {
    return read(text).problems().stream().map(problem -> problem.code().name()).toList();
  }

  @Test
  void valuesAreTextWhateverTheyLookLike() {
    assertEquals("0010", only("minutes: 0010\n"));
    assertEquals("yes", only("healthy: yes\n"));
    assertEquals("", only("at:\n"));
    assertEquals("24 to 28 V", only("expect:   24 to 28 V  \r\n"));
  }

  @Test
  void quotesAndFoldedTextAreRead() {
    assertEquals("Customer says: too warm", only("complaint: \"Customer says: too warm\"\n"));
    assertEquals("it's off", only("complaint: 'it''s off'\n"));
    assertEquals("one two", only("complaint: >-\n  one\n  two\n"));
    assertEquals("one two", only("complaint: one\n  two\n"));
  }

  @Test
  void yamlListsReadAsItemsWithCommas() {
    assertEquals("R, C", only("leads: [R, C]\n"));
    assertEquals("R, C", only("leads:\n  - R\n  - C\n"));
  }

  @Test
  void nestedLinesAndAliasesAreRefused() {
    assertEquals(List.of("line-not-plain"), codes("look:\n  contactor: in\n"));
    assertEquals(List.of("line-not-plain"), codes("a: &x 1\nb: *x\n"));
    assertEquals(List.of("line-not-plain"), codes("a: &a [x, x]\nb: &b [*a, *a]\nc: &c [*b, *b]\n"));
    assertEquals(List.of("line-not-plain"), codes("- a\n- b\n"));
  }

  @Test
  void sameKeyTwiceIsReportedWhateverItsCase() {
    assertEquals(List.of("key-twice"), codes("at: furnace\nAt: attic\n"));
  }

  @Test
  void placesStandWhereTheValueDoesAfterWideLetters() {
    Lines.Read read = read("note: \"\uD83D\uDD0C\"\nat: \"furnace\"\n");
    Entry at = read.entries().get(1);
    assertEquals("at", "note: \"\uD83D\uDD0C\"\nat: \"furnace\"\n".substring(at.keySpan().start(), at.keySpan().end()));
  }

  @Test
  void itemsKnowTheirPlaces() {
    Entry leads = read("leads: R,  coil in , C\n").entries().get(0);
    assertEquals(List.of("R", "coil in", "C"), leads.items().stream().map(Entry.Item::text).toList());
    leads.items().forEach(item -> assertEquals(item.text(),
        "leads: R,  coil in , C\n".substring(item.span().start(), item.span().end())));
  }

  /** The quick way and the YAML parser agree on whatever the quick way takes. */
  @Test
  void plainLinesMeanWhatYamlSays() {
    Random random = new Random(20260101);
    int compared = 0;
    for (int round = 0; round < 20_000; round++) {
      String text = randomLines(random);
      Source source = new Source("x.md", text);
      Lines.Read yaml = Yaml.read(source, new Span(0, source.text().length()));
      Lines.Read quick = Lines.readQuickly(source, new Span(0, source.text().length())).orElse(yaml);
      compared += quick == yaml ? 0 : 1;
      assertEquals(List.of(), quick == yaml ? List.of() : yaml.problems(), text);
      assertEquals(values(yaml), values(quick), text);
    }
    assertTrue(compared > 4_000, "only " + compared + " texts were read the quick way");
  }

  private static List<String> values(Lines.Read read) {
    return read.entries().stream().map(entry -> entry.key() + "=" + entry.value()
        + (entry.value().isEmpty() ? "" : "@" + entry.valueSpan()) + "@" + entry.keySpan().start()).toList();
  }

  private static String randomLines(Random random) {
    var text = new StringBuilder();
    for (int line = random.nextInt(4); line >= 0; line--) {
      text.append("key").append(line).append(random.nextInt(9) == 0 ? " b-c" : "").append(':');
      text.append(" ".repeat(random.nextInt(12) == 0 ? 0 : 1 + random.nextInt(2)));
      for (int i = random.nextInt(9); i > 0; i--) {
        text.append(
            random.nextInt(3) == 0 ? SIGNS.charAt(random.nextInt(SIGNS.length())) : (char) ('a' + random.nextInt(26)));
      }
      text.append(random.nextInt(5) == 0 ? "  " : "").append(random.nextInt(8) == 0 ? "\n# note\n" : "\n");
    }
    return text.toString();
  }

  private static final String SIGNS = " ,.:-#?&*!|>'\"%@`[]{}=~0123456789\t\u00b0\u00b5\u03a9\u00e9\u007f\ufeff";
}
