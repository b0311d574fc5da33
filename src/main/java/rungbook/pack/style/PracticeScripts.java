package rungbook.pack.style;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Collectors;

/** The scripts of a practice page, as small as those of a pack. */
public final class PracticeScripts {

  private static final String STRICT = "'use strict';\n";

  /** The solver and the meter alone. */
  public static final String SOLVER = functions("pack/parts.js", "practice/network.js", "practice/circuit.js",
      "practice/meter.js");

  /** All of the page. */
  public static final String PAGE = functions("pack/parts.js", "pack/qr.js", "practice/network.js",
      "practice/circuit.js", "practice/meter.js", "practice/round.js", "practice/follow.js", "practice/bench.js",
      "practice/results.js", "practice/practice.js");

  public static final String STYLE = Assets.PACK_STYLE + Minified.style(read("/rungbook/practice/practice.css"));

  private PracticeScripts() {}

  private static String functions(String... names) {
    return STRICT + Arrays.stream(names).map(name -> read("/rungbook/" + name).replace(STRICT, ""))
        .map(Minified::function).collect(Collectors.joining("\n"));
  }

  private static String read(String name) {
    try (InputStream in = PracticeScripts.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
