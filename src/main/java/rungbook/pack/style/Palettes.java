package rungbook.pack.style;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The colors that the server's pages and the packs share, by palette: custom properties and their values.
 *
 * @param byName {@code light}, {@code dark}, {@code dim} and {@code printed}
 */
record Palettes(Map<String, Map<String, String>> byName) {

  /** A comment that begins with the palette's name, then the innermost block after it. */
  private static final Pattern BLOCK = Pattern
      .compile("/\\* (\\w+)(?:: [^*]*)? \\*/\\s*(?:@media[^{]*\\{\\s*)?:root[^{]*\\{([^}]*)\\}");
  private static final Pattern TOKEN = Pattern.compile("(--[\\w-]+):\\s*([^;]+);");
  private static final Pattern USE = Pattern.compile("var\\((--[\\w-]+)\\)");
  private static final Pattern PLACE = Pattern.compile("palette:\\s*(\\w+);");

  /** @param tokens the text of tokens.css */
  static Palettes in(String tokens) {
    Map<String, Map<String, String>> byName = new LinkedHashMap<>();
    BLOCK.matcher(tokens).results().forEach(block -> byName.put(block.group(1), tokens(block.group(2))));
    return new Palettes(byName);
  }

  private static Map<String, String> tokens(String block) {
    Map<String, String> tokens = new LinkedHashMap<>();
    TOKEN.matcher(block).results().forEach(token -> tokens.put(token.group(1), token.group(2)));
    return tokens;
  }

  /**
   * A style with its palettes filled in, those colors that it uses and no others.
   *
   * @throws IllegalArgumentException if it asks for a palette that is not there
   */
  String into(String style) {
    return PLACE.matcher(style).replaceAll(place -> Matcher.quoteReplacement(used(place.group(1), style)));
  }

  /** A style with one palette's values in the places of its names. */
  String writtenOut(String name, String style) {
    Map<String, String> palette = Objects.requireNonNull(byName.get(name), name);
    return USE.matcher(style).replaceAll(use -> Matcher.quoteReplacement(palette.get(use.group(1))));
  }

  private String used(String name, String style) {
    if (!byName.containsKey(name)) {
      throw new IllegalArgumentException("there is no palette " + name);
    }
    return byName.get(name).entrySet().stream().filter(token -> style.contains("var(" + token.getKey() + ")"))
        .map(token -> token.getKey() + ": " + token.getValue() + ";").collect(Collectors.joining(" "));
  }
}
