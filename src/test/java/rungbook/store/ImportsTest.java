package rungbook.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.store.Imports.Result.Imported;
import rungbook.store.Imports.Result.NothingImported;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.ImportBatch;
import rungbook.store.document.Refused;
import rungbook.store.document.Revision;
import rungbook.store.document.Save;

@Tag("server")
@QuarkusTest
class ImportsTest {
  @Inject
  Store store;
  @Inject
  Imports imports;

  @Test
  void everyFileIsAccountedForWhileOthersSaveTheSameOnes() throws Exception {
    var files = new ArrayList<String>();
    for (var i = 0; i < 300; i++) {
      files.add("trees/import-busy-" + i + ".md");
    }
    var isOver = new AtomicBoolean();
    var threads = Executors.newFixedThreadPool(4);
    try {
      var writers = new ArrayList<Future<?>>();
      for (var writer = 0; writer < 4; writer++) {
        var path = new DocumentPath(files.get(writer));
        writers.add(threads.submit(() -> writeUntil(isOver, path)));
      }
      for (var round = 0; round < 3; round++) {
        var result = assertInstanceOf(Imported.class, imports.bring(incoming("imported " + round, files), "Tobin"));
        assertEquals(300, result.saved().size() + result.unchanged().size());
        assertTrue(result.saved().containsAll(result.savedMeanwhile()));
        for (var path : result.saved()) {
          var text = "imported " + round;
          assertTrue(Histories.all(store, path).stream().anyMatch(r -> r.text().equals(text)),
              path + " is said to be saved");
        }
      }
      isOver.set(true);
      for (var writer : writers) {
        writer.get();
      }
    } finally {
      isOver.set(true);
      threads.shutdown();
    }
    assertTrue(files.stream().allMatch(file -> store.firstBroken(new DocumentPath(file)).isEmpty()));
  }

  private void writeUntil(AtomicBoolean isOver, DocumentPath path) {
    for (var i = 0; !isOver.get(); i++) {
      var base = store.head(path).map(Revision::number).orElse(0);
      store.save(Save.text(path, base, "by hand " + i, "Odalys", ""));
    }
  }

  @Test
  void oneFileThatIsRefusedStopsAllOfThemAndIsNamed() {
    store.save(Save.text(new DocumentPath("trees/import-Taken.md"), 0, "first", "Odalys", ""));
    var files = List.of("trees/import-good.md", "trees/import-taken.md", "trees/nul.md");
    var nothing = assertInstanceOf(NothingImported.class, imports.bring(incoming("x", files), "Tobin"));
    assertEquals(List.of("trees/import-taken.md", "trees/nul.md"),
        nothing.refused().stream().map(ImportBatch.Refusal::name).toList());
    assertTrue(nothing.refused().get(0).says().contains("`trees/import-Taken.md` would be the same file"),
        nothing.toString());
    assertTrue(store.head(new DocumentPath("trees/import-good.md")).isEmpty());
  }

  @Test
  void anImportNeedsAnAuthor() {
    assertThrows(Refused.class, () -> imports.bring(incoming("x", List.of("trees/import-nobody.md")), " "));
  }

  @Test
  void whatWasImportedAlreadyIsUnchanged() {
    var files = List.of("trees/import-twice.md");
    imports.bring(incoming("x", files), "Tobin");
    var again = assertInstanceOf(Imported.class, imports.bring(incoming("x", files), "Tobin"));
    assertEquals(1, again.unchanged().size());
    assertEquals(Set.of(), again.savedMeanwhile());
  }

  private static ImportBatch incoming(String text, List<String> paths) {
    var files = new TreeMap<DocumentPath, byte[]>();
    paths.forEach(path -> files.put(new DocumentPath(path), text.getBytes(UTF_8)));
    return new ImportBatch(files, List.of(), List.of());
  }
}
