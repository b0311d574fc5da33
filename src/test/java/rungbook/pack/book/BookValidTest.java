package rungbook.pack.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.library.CompiledTree;
import rungbook.library.ShortRun;
import rungbook.pack.Samples;
import rungbook.tree.Tree;

/**
 * Books are valid EPUB 3: EPUBCheck 5.2.1 finds no error in them, and nothing to warn of. With {@code
 * -Drungbook.short=true} the starter library's book has every fifth tree.
 */
@Tag("slow")
class BookValidTest {

  @Test
  void starterLibrary() {
    List<Tree> trees = Samples.STARTER.trees().stream().map(CompiledTree::tree).toList();
    assertEquals(List.of(), BookCheck.of(BookSamples.of(ShortRun.oneIn(5, trees).toList()).bytes()));
  }

  @Test
  void singleTreeWhoseOtherTreesAreNotInIt() {
    assertEquals(List.of(), BookCheck.of(BookSamples.starter("no-cooling-blower-runs").bytes()));
  }

  @Test
  void noTree() {
    assertEquals(List.of(), BookCheck.of(BookSamples.of(List.of()).bytes()));
  }

  @Test
  void hostileTextAndPicturesOfEachKind() {
    assertEquals(List.of(), BookCheck.of(BookSamples.hostile().bytes()));
  }

  /** The check sees what is wrong, or it would prove nothing. */
  @Test
  void brokenBookIsFound() {
    byte[] broken = EpubContainer.of(Book.MEDIA_TYPE, Map.of("META-INF/container.xml",
        "<container/>".getBytes(StandardCharsets.UTF_8)));
    assertFalse(BookCheck.of(broken).isEmpty());
  }
}
