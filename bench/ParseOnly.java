import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import rungbook.markdown.Flexmark;

/** Reads and parses every Markdown file of a folder, on all cores as a check does, and does nothing with it. */
final class ParseOnly {

  private ParseOnly() {}

  public static void main(String[] arguments) throws IOException {
    try (Stream<Path> files = Files.list(Path.of(arguments[0]))) {
      List<Path> trees = files.filter(file -> file.toString().endsWith(".md")).sorted().toList();
      System.out.println(trees.parallelStream().mapToLong(ParseOnly::parse).sum() + " characters in " + trees.size() + " files parsed");
    }
  }

  private static int parse(Path file) {
    try {
      return Flexmark.parseOnly(Files.readString(file));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
