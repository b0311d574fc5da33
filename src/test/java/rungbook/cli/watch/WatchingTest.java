package rungbook.cli.watch;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class WatchingTest {

  @TempDir
  private Path folder;

  @Test
  void pollingSeesASaveToo() throws IOException, InterruptedException {
    Path tree = Files.writeString(folder.resolve("a.md"), "before");
    Watching polled = new PolledWatching(List.of(folder));
    Files.writeString(tree, "before and after");
    polled.await();
  }

  @Test
  void anEditorsScratchFilesDoNotCount() {
    assertTrue(Watching.counts(Path.of("a.md")) && Watching.counts(Path.of("board.jpeg")));
    assertTrue(List.of(".a.md.swp", "4913", "a.md~", ".a.md").stream().map(Path::of).noneMatch(Watching::counts));
  }
}
