package rungbook.pack.style;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;
import java.util.stream.Collectors;

/** Style and scripts as they go into a pack: small, and with the colors that the server's pages have. */
public final class Assets {

  public static final String PACK_STYLE = Minified
      .style(Palettes.in(read("/META-INF/resources/tokens.css"))
          .into(all("pack.css", "caution.css", "step.css", "dock.css", "paper.css")));
  public static final String PACK_SCRIPT = script("pack");

  /** Of a book. Readers differ in what they know of styles, so that its colors are written out. */
  public static final String BOOK_STYLE = Minified
      .style(Palettes.in(read("/META-INF/resources/tokens.css")).writtenOut("light", all("book.css")));
  public static final String INDEX_SCRIPT = script("index");
  public static final String LIBRARY_SCRIPT = script("library");
  public static final String WORKER = script("sw");

  private Assets() {}

  /** The build made it from the modules in src/main/scripts. */
  private static String script(String name) {
    return read("/rungbook/pack/" + name + ".min.js").strip();
  }

  private static String all(String... names) {
    return Arrays.stream(names).map(name -> read("/rungbook/pack/" + name)).collect(Collectors.joining());
  }

  static String read(String name) {
    try (InputStream in = Objects.requireNonNull(Assets.class.getResourceAsStream(name), name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
