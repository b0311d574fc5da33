package rungbook.pack.style;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One file has the colors, and they can be read. */
class PalettesTest {

  private static final Path RESOURCES = Path.of("src/main/resources");
  private static final Path PAGES = RESOURCES.resolve("META-INF/resources");
  private static final Pattern COLOR = Pattern
      .compile("#[0-9a-fA-F]{3,8}\\b|\\b(?:rgba?|hsla?|hwb|lab|lch|oklab|oklch|color)\\(|"
          + "(?<=[:\\s,(])(?:black|white|red|green|blue|gr[ae]y|yellow|orange|navy|maroon|silver|brown)(?=[;,)\\s!}])");

  private final Palettes palettes = Palettes.in(read(PAGES.resolve("tokens.css")));

  @Test
  void everyPaletteChangesColorsThatLightHas() {
    assertEquals(List.of("light", "dark", "dim", "printed"), List.copyOf(palettes.byName().keySet()));
    palettes.byName().forEach(
        (name, tokens) -> assertTrue(palettes.byName().get("light").keySet().containsAll(tokens.keySet()), name));
  }

  @Test
  void everyStyleHasItsColorsFromTheTokens() throws IOException {
    List<Path> styles = new ArrayList<>(packStyles());
    styles.addAll(List.of(PAGES.resolve("rungbook.css"), PAGES.resolve("editor/editor.css")));
    for (Path style : styles) {
      String text = read(style).replaceAll("(?s)/\\*.*?\\*/", "");
      // a class may be called after a color: what is looked at is what stands in the blocks
      Pattern.compile("\\{([^{}]*)\\}").matcher(text).results()
          .forEach(block -> assertEquals(List.of(),
              COLOR.matcher(block.group(1)).results().map(found -> found.group()).toList(), style + block.group(1)));
    }
  }

  @Test
  void everyColorThatIsUsedIsThereAndNoneIsThereInVain() throws IOException {
    Set<String> used = new TreeSet<>();
    Set<String> own = new TreeSet<>(
        Set.of("--gap", "--narrow", "--mono", "--b", "--t", "--s", "--i", "--p", "--firm", "--may", "--dots"));
    for (String style : List.of("rungbook.css", "editor/editor.css", "editor/text.js")) {
      names("var\\((--[\\w-]+)", read(PAGES.resolve(style))).forEach(used::add);
    }
    packStyles().forEach(style -> names("var\\((--[\\w-]+)", read(style)).forEach(used::add));
    used.removeAll(own);
    assertEquals(new TreeSet<>(palettes.byName().get("light").keySet()), used);
  }

  /** Pictures that stand for themselves cannot ask for a token, so they repeat its value. */
  @Test
  void picturesHaveTheColorsOfLight() throws IOException {
    Set<String> light = Set.copyOf(palettes.byName().get("light").values());
    for (Path file : List.of(PAGES.resolve("mark.svg"), Path.of("src/main/java/rungbook/map/Drawing.java"),
        Path.of("src/main/java/rungbook/pack/LibraryFolder.java"))) {
      List<String> colors = names("(#[0-9a-f]{3,6})\\b", read(file));
      assertTrue(!colors.isEmpty() && light.containsAll(colors), file + " " + colors);
    }
  }

  /** WCAG 2.2, 1.4.6: contrast of at least 7:1, by its own formula. */
  @ParameterizedTest
  @ValueSource(strings = {"light", "dark", "dim", "printed"})
  void textHasAContrastOfSevenToOne(String name) {
    Map<String, String> palette = new LinkedHashMap<>(palettes.byName().get("light"));
    palette.putAll(palettes.byName().get(name));
    for (String ground : List.of("--paper", "--face", "--added")) {
      contrast(palette, "--ink", ground);
    }
    for (String text : List.of("--quiet", "--common")) {
      contrast(palette, text, "--paper");
      contrast(palette, text, "--face");
    }
    for (String signal : List.of("--danger", "--warning", "--caution", "--notice")) {
      contrast(palette, signal + "-ink", signal);
    }
    contrast(palette, "--tag-ink", "--tag-red");
    contrast(palette, "--tag-ink", "--tag-black");
  }

  @ParameterizedTest
  @ValueSource(strings = {"light", "dark"})
  void textOfTheServersOwnHasAContrastOfSevenToOne(String name) {
    Map<String, String> palette = new LinkedHashMap<>(palettes.byName().get("light"));
    palette.putAll(palettes.byName().get(name));
    for (String ground : List.of("--shade", "--added-strong", "--gone", "--gone-strong")) {
      contrast(palette, "--ink", ground);
    }
    for (String text : List.of("--hot", "--quiet", "--common")) {
      contrast(palette, text, text.equals("--hot") ? "--face" : "--shade");
    }
  }

  @Test
  void styleGetsTheColorsThatItUsesAndNoOthers() {
    assertEquals("a { --ink: #16222c; } b { color: var(--ink) }",
        palettes.into("a { palette: light; } b { color: var(--ink) }"));
    assertThrows(IllegalArgumentException.class, () -> palettes.into("a { palette: dusk; }"));
  }

  private static List<Path> packStyles() throws IOException {
    try (var files = Files.list(RESOURCES.resolve("rungbook/pack"))) {
      return files.filter(file -> file.toString().endsWith(".css")).sorted().toList();
    }
  }

  private static void contrast(Map<String, String> palette, String text, String ground) {
    double one = luminance(palette.get(text));
    double other = luminance(palette.get(ground));
    double ratio = (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    assertTrue(ratio >= 7, text + " on " + ground + ": " + ratio);
  }

  private static double luminance(String hex) {
    String full = hex.length() == 4 ? hex.replaceAll("([0-9a-f])", "$1$1") : hex;
    int rgb = Integer.parseInt(full.substring(1), 16);
    return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
  }

  private static double linear(int value) {
    double share = value / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  private static List<String> names(String pattern, String text) {
    return Pattern.compile(pattern).matcher(text).results().map(found -> found.group(1)).toList();
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
