import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.data.MutableDataSet;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Reads and parses every Markdown file of a folder, on all cores as a check does, and does nothing with it. */
final class ParseOnly {

  // the extensions that the program uses, with the library's own parsing of links
  private static final Parser PARSER = Parser.builder(new MutableDataSet().set(Parser.EXTENSIONS, List.of(TablesExtension.create()))).build();

  private ParseOnly() {}

  public static void main(String[] arguments) throws IOException {
    try (Stream<Path> files = Files.list(Path.of(arguments[0]))) {
      List<Path> trees = files.filter(file -> file.toString().endsWith(".md")).sorted().toList();
      System.out.println(trees.parallelStream().mapToLong(ParseOnly::parse).sum() + " characters in " + trees.size() + " files parsed");
    }
  }

  private static int parse(Path file) {
    try {
      return PARSER.parse(Files.readString(file)).getTextLength();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }
}
