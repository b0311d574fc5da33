package rungbook.pack.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Style and scripts as they go into a pack: small, and with the colors that the server's pages have. */
public final class Assets {

  public static final String PACK_STYLE = Minified
      .style(Palettes.in(read("/META-INF/resources/tokens.css")).into(read("/rungbook/pack/pack.css")));
  public static final String PACK_SCRIPT = Minified.script(read("/rungbook/pack/pack.js"));
  public static final String INDEX_SCRIPT = Minified.script(read("/rungbook/pack/index.js"));
  public static final String WORKER = Minified.script(read("/rungbook/pack/sw.js"));

  private Assets() {}

  private static String read(String name) {
    try (InputStream in = Assets.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
