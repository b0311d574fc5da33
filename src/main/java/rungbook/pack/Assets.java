package rungbook.pack;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Style and scripts as they go into a pack: small, and with the colors that the server's pages have. */
final class Assets {

  static final String PACK_STYLE = Minified.style(Palettes.in(read("/META-INF/resources/tokens.css")).into(read("/rungbook/pack/pack.css")));
  static final String PACK_SCRIPT = Minified.script(read("/rungbook/pack/pack.js"));
  static final String INDEX_SCRIPT = Minified.script(read("/rungbook/pack/index.js"));
  static final String WORKER = Minified.script(read("/rungbook/pack/sw.js"));

  private Assets() {}

  private static String read(String name) {
    try (InputStream in = Assets.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
