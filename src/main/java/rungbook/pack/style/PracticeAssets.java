package rungbook.pack.style;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** Style and script of a practice page, which has what packs have and more. */
public final class PracticeAssets {

  public static final String STYLE = Assets.PACK_STYLE + Minified.style(read("/rungbook/practice/practice.css"));

  /** The build made it from the modules in src/main/scripts. */
  public static final String SCRIPT = read("/rungbook/pack/practice.min.js").strip();

  private PracticeAssets() {}

  private static String read(String name) {
    try (InputStream in = Objects.requireNonNull(PracticeAssets.class.getResourceAsStream(name), name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
