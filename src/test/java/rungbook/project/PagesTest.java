package rungbook.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The project's files keep their word. */
class PagesTest {

  private static final Pattern LINK = Pattern.compile("]\\(([^)#:\\s]+)(#[^)\\s]*)?\\)");

  @Test
  void everyPackageIntroducesItself() throws IOException {
    List<Path> silent = sources("src/main/java").map(Path::getParent).distinct()
        .filter(folder -> !Files.exists(folder.resolve("package-info.java"))).toList();
    assertEquals(List.of(), silent);
  }

  @Test
  void everyJavaFileStaysUnderThreeHundredLines() throws IOException {
    var long300 = new ArrayList<String>();
    for (Path file : Stream.concat(sources("src/main/java"), sources("src/test/java")).toList()) {
      int lines = Files.readAllLines(file).size();
      if (lines >= 300) {
        long300.add(file + " has " + lines);
      }
    }
    assertEquals(List.of(), long300);
  }

  @Test
  void everyLinkBetweenThePagesLeadsSomewhere() throws IOException {
    var broken = new ArrayList<String>();
    for (Path page : pages()) {
      Matcher link = LINK.matcher(withoutExamples(Files.readString(page)));
      while (link.find()) {
        if (!Files.exists(page.toAbsolutePath().getParent().resolve(link.group(1)))) {
          broken.add(page + ": " + link.group(1));
        }
      }
    }
    assertEquals(List.of(), broken);
  }

  @Test
  void theIndexOfTheDocsNamesEveryPage() throws IOException {
    String index = Files.readString(Path.of("docs/README.md"));
    try (Stream<Path> pages = Files.list(Path.of("docs"))) {
      List<String> unnamed = pages.map(page -> page.getFileName().toString())
          .filter(name -> name.endsWith(".md") && !name.equals("README.md") && !index.contains("(" + name + ")"))
          .toList();
      assertEquals(List.of(), unnamed);
    }
  }

  @Test
  void noPageSendsAReaderToAPackageRegistry() throws IOException {
    Pattern registry = Pattern.compile("https?://(repo|repo1|registry|deb|security|mirror)[a-z0-9.-]*\\.");
    for (Path page : pages()) {
      assertFalse(registry.matcher(Files.readString(page)).find(), page.toString());
    }
  }

  private static List<Path> pages() throws IOException {
    try (Stream<Path> docs = Files.walk(Path.of("docs"))) {
      return Stream.concat(Stream.of(Path.of("README.md"), Path.of("DEVELOPERS.md")),
          docs.filter(file -> file.toString().endsWith(".md"))).toList();
    }
  }

  /** Fenced text shows what others write; its links are theirs. */
  private static String withoutExamples(String text) {
    return text.replaceAll("(?ms)^(~~~+|```+).*?^\\1", "").replaceAll("`[^`\n]*`", "");
  }

  private static Stream<Path> sources(String root) throws IOException {
    try (Stream<Path> files = Files.walk(Path.of(root))) {
      return files.filter(file -> file.toString().endsWith(".java")).toList().stream();
    }
  }
}
