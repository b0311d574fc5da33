package rungbook.web.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import rungbook.library.CompiledTree;
import rungbook.library.Library;
import rungbook.library.LibraryCompiler;
import rungbook.library.LibraryText;
import rungbook.proof.MadeUp;
import rungbook.proof.Proving;
import rungbook.proof.advice.TreeState;
import rungbook.proof.coverage.LibraryCoverage;
import rungbook.source.Source;

/** The coverage of a library fills by itself, however many trees there are. */
class CoverageServiceTest {
  private static final int MANY = 300;
  private static final Proving.Result PROVED = new Proving.Result.Proved(new MadeUp(Map.of())
      .prove(MadeUp.tree("one", "", "## Glow\n\n```check\nlook: glow\nat: hall\n```\n\n- yes: [Sound](#sound)\n"
          + "- no: [Dead](#dead)\n\n## Sound\n\n```finding\nhealthy: yes\n```\n\n## Dead\n\n```finding\n"
          + "fault: lamp dead\n```\n")));

  private final Map<String, Integer> proofs = new ConcurrentHashMap<>();
  private final CountDownLatch closed = new CountDownLatch(1);
  private final ProofService service = new ProofService(() -> library(1), this::prove,
      new ProofSettings(1, 1, Duration.ofMillis(300), Duration.ofSeconds(1), Duration.ofSeconds(60)));
  private final CoverageService coverage = new CoverageService(service);

  private Proving.Result prove(CompiledTree tree, Library library) {
    proofs.merge(tree.path(), 1, Integer::sum);
    if (tree.path().contains("slow")) {
      try {
        closed.await();
      } catch (InterruptedException stopped) {
        throw new CancellationException("given up");
      }
    }
    return PROVED;
  }

  @AfterEach
  void close() {
    coverage.end();
    service.close();
    closed.countDown();
  }

  private static Library library(int trees, String... more) {
    var texts = new TreeMap<String, Source>();
    for (var i = 0; i < trees; i++) {
      put(texts, "trees/tree-%03d.md".formatted(i));
    }
    List.of(more).forEach(path -> put(texts, path));
    return LibraryCompiler.compile(new LibraryText(texts, new TreeMap<>(), List.of()));
  }

  private static void put(Map<String, Source> texts, String path) {
    texts.put(path, new Source(path, "---\ntitle: T\ncomplaint: C\n---\n\n## A\n\n```finding\nhealthy: yes\n```\n"));
  }

  private CoverageService.Found whole(Library library) {
    var found = coverage.found(library);
    for (var tries = 0; tries < 20 && !found.isWhole(); tries++) {
      found = coverage.found(library);
    }
    return found;
  }

  @Test
  void everyTreeOfALargeLibraryIsInItAndProvedOnce() {
    var library = library(MANY);
    var found = whole(library);
    assertEquals(MANY, found.done());
    assertEquals(MANY, found.trees().size());
    assertEquals(MANY, LibraryCoverage.of(found.trees()).get(0).trees().size());
    assertEquals(List.of(1), proofs.values().stream().distinct().toList());
    assertTrue(library.trees().stream().allMatch(tree -> service.state(tree, library) instanceof TreeState.Proved
        || service.state(tree, library) instanceof TreeState.ToDo), "the list knows the state of each");
  }

  @Test
  void aTreeWhoseProofRunsTooLongIsNamedAndHoldsNothingUp() {
    var found = whole(library(3, "trees/slow.md"));
    assertEquals(List.of("trees/slow.md"), found.stopped().stream().map(TreeEntry::path).toList());
    assertEquals(3, found.trees().size());
    assertTrue(found.isWhole());
    assertEquals(1, proofs.get("trees/slow.md"), "it is not tried again with each request");
  }

  @Test
  void aChangedLibraryBeginsAnew() {
    assertEquals(2, whole(library(2)).done());
    var changed = library(2);
    assertEquals(2, whole(changed).all());
    assertEquals(2, proofs.get("trees/tree-000.md"));
    assertFalse(service.state(changed.trees().get(0), changed) instanceof TreeState.Checked);
  }
}
