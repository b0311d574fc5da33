package rungbook.markdown;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.util.ast.Node;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Leaving out heading ids changes no byte: the starter library's texts, node by node, with the library's own renderer
 * and with ours.
 */
class HeadingIdsTest {

  private static final HtmlRenderer WITH_IDS = Prose.renderer(Flexmark.OPTIONS);

  @Test
  void noByteChanges() throws IOException {
    for (Path file : texts()) {
      for (Node node : Flexmark.parse(Files.readString(file)).getChildren()) {
        assertEquals(WITH_IDS.render(node), Prose.html(node), file.toString());
      }
    }
  }

  private static List<Path> texts() {
    try (Stream<Path> trees = Files.walk(Path.of("trees")); Stream<Path> shared = Files.walk(Path.of("shared"))) {
      return Stream.concat(trees, shared).filter(file -> file.toString().endsWith(".md")).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
