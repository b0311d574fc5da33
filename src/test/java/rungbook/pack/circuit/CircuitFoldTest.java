package rungbook.pack.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rungbook.markdown.DocumentReader;
import rungbook.proof.Suspects;
import rungbook.source.Source;
import rungbook.system.SystemVariants;
import rungbook.system.Terminal;
import rungbook.system.reader.VariantsReader;

/** A lamp at the end of a cable of two conductors; which faults can be where is given by hand. */
class CircuitFoldTest {

  private static final SystemVariants LAMP = VariantsReader.read("lamp", DocumentReader.read(new Source("lamp", """
      ---
      title: Lamp & cable
      ---

      ```locations
      box: start
      hall: walk 1 min
      ```

      ```points
      L1: at box, 120 V
      A: at box, hall, 120 V
      B: at box, hall
      ground: at box
      ```

      ```parts
      supply: supply, 120 V, 0.1 ohm, L1 to B at box
      fuse: fuse, 3 A, L1 to A at box
      cable: cable, 14 AWG, 50 to 100 ft, 0 to 40 C, box to hall, conductor A, conductor B
      lamp: load, 120 V, 60 W, A at hall to B at hall
      ```

      ```faults
      fuse open: open fuse, likelihood 3
      cable cut: open B cable, likelihood 1
      lamp open: open lamp, likelihood 4
      ```
      """))).systems();

  /** Case 0 is the healthy system; the others are the faults in the order of the text. */
  private static final Suspects SUSPECTS = new Suspects(
      List.of(new Suspects.Case(List.of(), 0), new Suspects.Case(List.of("fuse open"), 3),
          new Suspects.Case(List.of("cable cut"), 1), new Suspects.Case(List.of("lamp open"), 4)),
      Map.of(0, bits(0, 1, 2, 3)), Map.of(0, List.of(bits(1, 2), bits(0, 1, 2, 3))));

  private static final List<Terminal> LEADS = List.of(new Terminal("a", "hall"), new Terminal("b", "hall"));

  private static BitSet bits(int... numbers) {
    return IntStream.of(numbers).collect(BitSet::new, BitSet::set, BitSet::or);
  }

  private static CircuitFold fold(CircuitPictures pictures) {
    return new CircuitFold(pictures, pictures.suspects(SUSPECTS));
  }

  private static CircuitFold fold() {
    return fold(CircuitPictures.shared(LAMP, ":c"));
  }

  @Test
  void theLikeliestIsFirstWithItsShareOfEight() {
    String html = fold().of(0, LEADS);
    assertTrue(html.contains("Still possible: 3"), html);
    assertTrue(html.contains("<li>lamp open <i>50 %</i></li><li>fuse open <i>38 %</i></li>"
        + "<li>cable cut <i>13 %</i></li></ol>"), html);
  }

  /** Bits 0 and 1 are 3, bits 0 to 2 are 7, each one byte: Aw and Bw in base64 (RFC 4648, section 4). */
  @Test
  void theScriptGetsTheFaultsOfAnAnswerThatRulesSomeOut() {
    assertEquals("Bw", fold().possible().codeAt(0));
    assertEquals(Optional.of("Aw"), fold().possible().code(0, 0));
    assertEquals(Optional.empty(), fold().possible().code(0, 1));
    assertEquals("375 125 500", fold().possible().likelihoods());
  }

  @Test
  void whereNothingIsKnownTheRungIsThereWithoutAList() {
    String html = fold().of(1, LEADS);
    assertTrue(html.contains("<svg class=\"upright\""));
    assertFalse(html.contains("Still possible") || html.contains("<ol"), html);
  }

  /** Fuse and cable feed the rails, so that the lamp is on a rung between them, and the rails are at its ends. */
  @Test
  void thePictureSaysWhichRungAndWhichPoints() {
    String html = fold().of(0, LEADS);
    assertTrue(html.contains("aria-label=\"Rung 1, supply: red lead on A at hall, black lead on B at hall.\""), html);
    assertTrue(html.contains(">RED<") && html.contains(">BLACK<"));
    String clamp = fold().of(0, LEADS.subList(0, 1));
    assertTrue(clamp.contains(": clamp at A at hall.\"") && clamp.contains(">CLAMP<"), clamp);
  }

  @Test
  void groundIsBelowTheRung() {
    String html = fold().of(0, List.of(LEADS.get(0), new Terminal("ground", "box")));
    assertTrue(html.contains("black lead on ground"), html);
    assertEquals(1, html.split("<svg", -1).length - 1);
  }

  @Test
  void nothingIsSaidOfPointsThatTheCircuitDoesNotHave() {
    assertEquals("", fold().of(0, List.of(new Terminal("x", "hall"), new Terminal("y", "hall"))));
  }

  /** The cut conductor is that of B: the other one of the cable is good. */
  @Test
  void aFaultIsInItsOwnConductor() {
    CircuitPictures pictures = CircuitPictures.shared(LAMP, ":c");
    pictures.ladder();
    assertEquals("Ag", faults(pictures, "B cable"));
    assertEquals("none", faults(pictures, "A cable"));
    assertEquals("BA", faults(pictures, "lamp"));
  }

  private static String faults(CircuitPictures pictures, String part) {
    return Pattern.compile("<g id=\"[^\"]*\"(?: data-f=\"([^\"]*)\")?>(?:(?!</g>).)*<text x=\"150\"[^>]*>"
        + part + "</text></g>").matcher(pictures.definitions()).results()
        .map(one -> Optional.ofNullable(one.group(1)).orElse("none")).findFirst().orElse("not drawn");
  }

  @Test
  void everyReferenceHasWhatItRefersTo() {
    CircuitPictures pictures = CircuitPictures.shared(LAMP, ":c");
    String shown = fold(pictures).of(0, LEADS) + pictures.ladder();
    String all = shown + pictures.definitions();
    Pattern.compile("href=\"#(:c\\d+)\"").matcher(all).results()
        .forEach(use -> assertTrue(all.contains(" id=\"" + use.group(1) + "\""), use.group(1)));
    assertTrue(shown.contains("<h2>Circuit of Lamp &amp; cable</h2>"));
  }

  @Test
  void aBookHasEachPictureWhole() {
    CircuitPictures pictures = CircuitPictures.whole(LAMP, ":c");
    assertFalse((fold(pictures).of(0, LEADS) + pictures.ladder()).contains("<use"));
    assertEquals("", pictures.definitions());
  }
}
