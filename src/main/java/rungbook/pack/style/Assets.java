package rungbook.pack.style;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Collectors;

/** Style and scripts as they go into a pack: small, and with the colors that the server's pages have. */
public final class Assets {

  /** Said once for all scripts of a page. */
  private static final String STRICT = "'use strict';\n";

  public static final String PACK_STYLE = Minified
      .style(Palettes.in(read("/META-INF/resources/tokens.css"))
          .into(all("pack.css", "caution.css", "step.css", "dock.css", "paper.css")));
  public static final String PACK_SCRIPT = functions("parts.js", "reading.js", "timer.js", "bars.js", "step.js",
      "keep.js", "walk.js", "qr.js", "share.js", "record.js", "pack.js");

  /** Of a book. Readers differ in what they know of styles, so that its colors are written out. */
  public static final String BOOK_STYLE = Minified
      .style(Palettes.in(read("/META-INF/resources/tokens.css")).writtenOut("light", all("book.css")));
  public static final String INDEX_SCRIPT = Minified.script(all("search.js", "index.js"));
  public static final String LIBRARY_SCRIPT = functions("search.js", "parts.js", "trees.js", "reading.js", "timer.js",
      "bars.js", "step.js", "keep.js", "walk.js", "qr.js", "share.js", "record.js", "pack.js");
  public static final String WORKER = Minified.script(read("/rungbook/pack/sw.js"));

  private Assets() {}

  private static String functions(String... names) {
    return STRICT + Arrays.stream(names).map(name -> read("/rungbook/pack/" + name).replace(STRICT, ""))
        .map(Minified::function).collect(Collectors.joining("\n"));
  }

  private static String all(String... names) {
    return Arrays.stream(names).map(name -> read("/rungbook/pack/" + name)).collect(Collectors.joining());
  }

  private static String read(String name) {
    try (InputStream in = Assets.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
