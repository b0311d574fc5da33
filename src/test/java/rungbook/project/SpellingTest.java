package rungbook.project;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** American spelling in everything that people read: texts, code and comments. */
class SpellingTest {

  private static final List<Path> ROOTS = Stream
      .of("README.md", "DEVELOPERS.md", "pom.xml", "rungbook", "rungbook-test", ".ci", "bench", "docs", "seeds",
          "shared", "src", "trees")
      .map(Path::of).toList();

  /** Other people's texts, trees kept as they once were, this list itself, and two pages that list words to avoid. */
  private static final Set<String> SKIPPED = Set.of("vendor", "node_modules", "old-library", "SpellingTest.java",
      "words.md", "style.md");

  private static final Set<String> BINARY = Set.of("png", "jpg", "jpeg", "gif", "webp", "ico", "zip", "db", "woff2");

  /** Not {@code labelledby}, an attribute of HTML, and not {@code unmodelled}, a field of the JSON report. */
  private static final List<String> WORDS = List.of(
      "colour", "neighbour", "behaviour", "favour", "honour", "labour", "vapour", "odour", "harbour", "draught",
      "burnt", "spoilt", "spelt", "learnt", "dreamt", "(?<!un)modelled", "modelling", "labelled(?!by)", "labelling",
      "travell", "signalled", "fuelled", "levelled", "energis", "magnetis", "organis", "recognis", "normalis",
      "initialis", "minimis", "maximis", "optimise", "summaris", "serialis", "specialise", "generalis", "standardis",
      "synchronis", "authoris", "realise", "stabilis", "utilis", "analyse[dr]", "licence", "defence", "offence",
      "towards", "whilst", "amongst", "metre", "litre", "centre", "fibre", "grey", "aluminium", "plough",
      "sulph", "artefact", "practis", "storey", "programmes?\\b", "judgement", "skilful", "fulfil\\b");

  private static final Pattern BRITISH = Pattern.compile(String.join("|", WORDS));

  /** The first two letters of each word: most places of a text begin none, and need no look at all of them. */
  private static final BitSet IS_BEGINNING = new BitSet();

  static {
    WORDS.forEach(word -> IS_BEGINNING.set(letters(word.replaceFirst("^\\(.*?\\)", ""), 0)));
  }

  @Test
  void nothingIsSpelledTheBritishWay() throws IOException {
    var found = new ArrayList<String>();
    for (Path file : files()) {
      String text = Files.readString(file).toLowerCase(Locale.ROOT);
      british(text).forEach(at -> found.add(file + ":" + (1 + text.substring(0, at).lines().count()) + ": "
          + text.substring(at).lines().findFirst().orElseThrow()));
    }
    assertEquals(List.of(), found);
  }

  /** Where such a word begins. */
  private static List<Integer> british(String text) {
    Matcher british = BRITISH.matcher(text).useTransparentBounds(true);
    return IntStream.range(0, text.length() - 1)
        .filter(at -> IS_BEGINNING.get(letters(text, at)) && british.region(at, text.length()).lookingAt())
        .boxed().toList();
  }

  private static int letters(String text, int at) {
    return (text.charAt(at) & 0x7f) << 7 | text.charAt(at + 1) & 0x7f;
  }

  @Test
  void aWordIsFoundWhereverItBegins() {
    assertEquals(List.of(1, 11), british(" colour, uncentred unmodelled labelledby"));
  }

  private static List<Path> files() {
    return ROOTS.stream().filter(Files::exists).flatMap(SpellingTest::below).filter(Files::isRegularFile)
        .filter(SpellingTest::isOurText).sorted().toList();
  }

  private static Stream<Path> below(Path root) {
    try {
      return Files.walk(root);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static boolean isOurText(Path file) {
    for (Path name : file) {
      if (SKIPPED.contains(name.toString())) {
        return false;
      }
    }
    String name = file.getFileName().toString();
    return !BINARY.contains(name.substring(name.lastIndexOf('.') + 1));
  }
}
