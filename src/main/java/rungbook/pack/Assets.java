package rungbook.pack;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;

/** Style and script as they go into a pack: without indents, and without lines that are only a comment. */
final class Assets {

  static final String PACK_STYLE = read("pack.css");
  static final String PACK_SCRIPT = read("pack.js");
  static final String INDEX_SCRIPT = read("index.js");
  static final String WORKER = read("sw.js");

  private Assets() {}

  private static String read(String name) {
    try (InputStream in = Assets.class.getResourceAsStream("/rungbook/pack/" + name)) {
      return tight(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String tight(String text) {
    return text.lines().map(String::strip).filter(line -> !line.isEmpty() && !isComment(line)).collect(Collectors.joining("\n"));
  }

  private static boolean isComment(String line) {
    return line.startsWith("//") || line.startsWith("/*") && line.endsWith("*/");
  }
}
