package rungbook.web.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungbook.text.ProcessorSpeed;
import rungbook.web.views.Difference.Kind;
import rungbook.web.views.Difference.Line;

class DifferenceTest {
  @Test
  void wordsAreMarkedInsideTheLinesThatBelongTogether() {
    var lines = Difference.of("stays\nred lead on R\nstays too\n", "stays\nblack lead on R\nstays too\n");
    assertEquals(List.of(" stays", "−[red] lead on R", "+[black] lead on R", " stays too", " "), shown(lines));
  }

  @Test
  void aStretchWithoutAChangeIsOneLineThatSaysHowLong() {
    var before = text(20, i -> "line " + i);
    assertEquals(
        List.of("…14 lines the same", " line 14", " line 15", " line 16", "−[line 17]", " line 18", " line 19", " "),
        shown(Difference.of(before, before.replace("line 17\n", ""))));
    assertEquals(List.of("…21 lines the same"), shown(Difference.of(before, before)));
  }

  @Test
  void aTextFromNothingIsAddedWhole() {
    assertEquals(List.of("−", "+[a]", "+[b]"), shown(Difference.of("", "a\nb")));
  }

  // what is not taken out of the older text and what is not added to the newer one must be the same lines in the same
  // order
  @ParameterizedTest
  @ValueSource(ints = {20, 200, 2_000, 9_000})
  void theLinesThatRemainAreTheSameInBothTexts(int size) {
    for (var seed = 0; seed < 4; seed++) {
      var random = new Random(seed);
      var before = random.ints(size, 0, size * 2 / 3).mapToObj(i -> "line " + i)
          .collect(Collectors.toCollection(ArrayList::new));
      var after = new ArrayList<>(before);
      for (var edits = random.nextInt(size); edits > 0; edits--) {
        after.set(random.nextInt(after.size()), "line " + random.nextInt(size));
        after.add(random.nextInt(after.size()), "new " + random.nextInt(3));
        after.remove(random.nextInt(after.size()));
      }
      var kept = new ArrayList<String>();
      var keptNew = new ArrayList<String>();
      int line = 0;
      int newLine = 0;
      for (var block : ChangedLines.of(before, after)) {
        assertTrue(block.lines() > 0 && block.from() >= line && block.newFrom() >= newLine, "in order");
        kept.addAll(before.subList(line, block.from()));
        keptNew.addAll(after.subList(newLine, block.newFrom()));
        line = block.to();
        newLine = block.newTo();
      }
      kept.addAll(before.subList(line, before.size()));
      keptNew.addAll(after.subList(newLine, after.size()));
      assertEquals(kept, keptNew);
    }
  }

  @Test
  void oneLineMovedInALongTextIsTwoChangedLines() {
    var lines = IntStream.range(0, 30_000).mapToObj(i -> "line " + i).collect(Collectors.toCollection(ArrayList::new));
    var before = String.join("\n", lines);
    lines.add(25_000, lines.remove(100));
    var changed = Difference.of(before, String.join("\n", lines)).stream().filter(line -> line.kind() != Kind.SAME)
        .toList();
    assertEquals(
        List.of("…97 lines the same", "−[line 100]", "…24894 lines the same", "+[line 100]", "…4996 lines the same"),
        shown(changed));
  }

  @Test
  void fourThousandLinesThatAllDifferTakeLessThanASecondOfProcessorTime() {
    assertQuick(text(4_000, i -> i + " the window of the reading at " + i),
        text(4_000, i -> i + " a reading of the window behind " + -i), false);
  }

  @Test
  void theLargestTextsTakeLessThanASecondToo() {
    assertQuick("a\n".repeat(2_000_000), "b\n".repeat(2_000_000), true);
    assertQuick("word ".repeat(800_000), "other ".repeat(600_000), true);
    assertQuick(text(150_000, i -> "line " + i % 7), text(150_000, i -> "line " + i % 11), true);
    assertQuick(text(100_000, i -> "line number " + i), text(100_000, i -> "line number " + (99_999 - i)), true);
  }

  private static void assertQuick(String before, String after, boolean cut) {
    Difference.of(text(500, i -> "warm " + i), text(500, i -> "up " + i));
    var threads = ManagementFactory.getThreadMXBean();
    var began = threads.getCurrentThreadCpuTime();
    var lines = Difference.of(before, after);
    var millis = (threads.getCurrentThreadCpuTime() - began) / 1_000_000;
    assertTrue(millis < ProcessorSpeed.limitMillis(1_000), millis + " ms of processor time");
    assertEquals(cut, lines.get(lines.size() - 1).kind() == Kind.NOTE, "says that it is cut");
    assertTrue(lines.size() <= 10_010 && lines.stream().mapToInt(line -> text(line).length()).sum() < 2 << 20,
        "bounded");
  }

  @Test
  void whatIsNotComparedWordByWordSaysSo() {
    var lines = Difference.of("a ".repeat(3_000), "b ".repeat(3_000));
    assertEquals("too many changes to show all of them word by word", text(lines.get(0)));
    assertFalse(lines.get(1).parts().get(0).changed());
  }

  private static String text(int lines, IntFunction<String> line) {
    return IntStream.range(0, lines).mapToObj(line).map(each -> each + "\n").collect(Collectors.joining());
  }

  private static List<String> shown(List<Line> lines) {
    return lines.stream().map(line -> switch (line.kind()) {
      case SAME -> " ";
      case LEFT_OUT, NOTE -> "…";
      default -> line.sign();
    } + text(line)).toList();
  }

  private static String text(Line line) {
    return line.parts().stream().map(part -> part.changed() ? "[" + part.text() + "]" : part.text())
        .collect(Collectors.joining());
  }
}
