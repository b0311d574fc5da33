package rungbook.project;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
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
  private static final Pattern BRITISH = Pattern.compile(String.join("|",
      "colour", "neighbour", "behaviour", "favour", "honour", "labour", "vapour", "odour", "harbour", "draught",
      "burnt", "spoilt", "spelt", "learnt", "dreamt", "(?<!un)modelled", "modelling", "labelled(?!by)", "labelling",
      "travell", "signalled", "fuelled", "levelled", "energis", "magnetis", "organis", "recognis", "normalis",
      "initialis", "minimis", "maximis", "optimise", "summaris", "serialis", "specialise", "generalis", "standardis",
      "synchronis", "authoris", "realise", "stabilis", "utilis", "analyse[dr]", "licence", "defence", "offence",
      "towards", "whilst", "amongst", "metre", "litre", "centre", "fibre", "grey", "aluminium", "plough",
      "sulph", "artefact", "practis", "storey", "programmes?\\b", "judgement", "skilful", "fulfil\\b"));

  @Test
  void nothingIsSpelledTheBritishWay() throws IOException {
    var found = new ArrayList<String>();
    for (Path file : files()) {
      int number = 0;
      for (String line : Files.readAllLines(file)) {
        number++;
        var british = BRITISH.matcher(line.toLowerCase(Locale.ROOT));
        if (british.find()) {
          found.add(file + ":" + number + ": " + british.group());
        }
      }
    }
    assertEquals(List.of(), found);
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
