package rungbook.web.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.library.CompiledTree;
import rungbook.library.Library;
import rungbook.library.LibraryCompiler;
import rungbook.library.LibraryText;
import rungbook.library.StarterLibrary;
import rungbook.library.StarterProofs;
import rungbook.library.solving.Prover;
import rungbook.proof.Proving;
import rungbook.source.Source;
import rungbook.web.http.Asker;
import rungbook.web.http.ProblemException;

/** A running proof can be stopped, and one person's does not hold up the others'. */
@Tag("slow")
class ProofServiceTest {
  private static final ProofSettings SETTINGS = new ProofSettings(1, 1, Duration.ofMinutes(5), Duration.ofMinutes(5),
      Duration.ofSeconds(60));
  private static final Library LIBRARY = LibraryCompiler
      .compile(new LibraryText(new TreeMap<>(), new TreeMap<>(), List.of()));
  private static final CompiledTree SLOW = tree("slow");
  private static final CompiledTree QUICK = tree("quick");

  private final CountDownLatch begun = new CountDownLatch(1);
  private final AtomicInteger proofs = new AtomicInteger();
  private ProofService service = service(SETTINGS);

  private ProofService service(ProofSettings settings) {
    return new ProofService(() -> LIBRARY, this::prove, settings);
  }

  /** Proves {@link #SLOW} until it is interrupted, any other tree at once. */
  private Proving.Result prove(CompiledTree tree, Library library) {
    proofs.incrementAndGet();
    if (tree.path().equals(SLOW.path())) {
      begun.countDown();
      try {
        Thread.sleep(600_000);
      } catch (InterruptedException stopped) {
        throw new CancellationException("given up");
      }
    }
    return Proving.unproved(tree.tree(), "nothing is proved here");
  }

  @AfterEach
  void everythingStopsWithTheService() throws InterruptedException {
    service.close();
    idle();
  }

  private void idle() throws InterruptedException {
    for (int i = 0; i < 500 && service.load() > 0; i++) {
      Thread.sleep(20);
    }
    assertEquals(0, service.load());
  }

  @Test
  void aSavedTreeAndADraftAreProvedBesideEachOther() throws Exception {
    var slow = ask(() -> service.draft(SLOW, asker("ann")));
    assertTrue(begun.await(10, TimeUnit.SECONDS));
    assertFalse(service.saved(QUICK, LIBRARY, asker("bob")).problems().isEmpty());
    assertFalse(slow.isDone());
  }

  @Test
  void aNewerDraftStopsTheOlderOfTheSameAuthorAndTree() throws Exception {
    var older = ask(() -> service.draft(SLOW, asker("ann")));
    assertTrue(begun.await(10, TimeUnit.SECONDS));
    var newer = ask(() -> service.draft(SLOW, asker("ann")));
    assertEquals("a newer text of this tree is being proved", problem(older));
    assertFalse(newer.isDone());
  }

  @Test
  void anotherAuthorsDraftOfTheSametereStopsNothing() throws Exception {
    var first = ask(() -> service.draft(SLOW, asker("ann")));
    assertTrue(begun.await(10, TimeUnit.SECONDS));
    var second = ask(() -> service.draft(SLOW, asker("bob")));
    for (int i = 0; i < 500 && service.load() < 2; i++) {
      Thread.sleep(10);
    }
    assertEquals(2, service.load());
    assertFalse(first.isDone() || second.isDone());
  }

  @Test
  void anAskerWhoIsGoneFreesTheWorker() throws Exception {
    var gone = new Gone();
    var slow = ask(() -> service.draft(SLOW, new Asker("ann", gone.actions::add)));
    assertTrue(begun.await(10, TimeUnit.SECONDS));
    var waiting = ask(() -> service.draft(QUICK, asker("bob")));
    Thread.sleep(100);
    assertFalse(waiting.isDone());
    gone.now();
    assertFalse(waiting.get(10, TimeUnit.SECONDS).problems().isEmpty());
    assertEquals("nobody waited for this proof any more", problem(slow));
  }

  @Test
  void aSavedTreeIsProvedOnceForAllWhoAskAndGoesOnWhileOneOfThemWaits() throws Exception {
    var gone = new Gone();
    var first = ask(() -> service.saved(SLOW, LIBRARY, new Asker("ann", gone.actions::add)));
    assertTrue(begun.await(10, TimeUnit.SECONDS));
    var second = ask(() -> service.saved(SLOW, LIBRARY, new Asker("bob", gone.actions::add)));
    for (int i = 0; i < 500 && gone.actions.size() < 2; i++) {
      Thread.sleep(10);
    }
    gone.actions.get(0).run();
    Thread.sleep(50);
    assertFalse(first.isDone() || second.isDone());
    assertEquals(1, proofs.get());
    gone.actions.get(1).run();
    assertEquals("nobody waited for this proof any more", problem(second));
  }

  @Test
  void aSavedTreeIsProvedOnceWhileNothingChanges() {
    assertSame(service.saved(QUICK, LIBRARY, asker("ann")), service.saved(QUICK, LIBRARY, asker("bob")));
    assertEquals(1, proofs.get());
  }

  @Test
  void aProofThatRunsTooLongIsStoppedAndTheAnswerNamesTheSettingThatAllowsMore() {
    service = service(new ProofSettings(1, 1, Duration.ofSeconds(1), Duration.ofSeconds(1), Duration.ofSeconds(60)));
    var late = assertThrows(ProblemException.class, () -> service.saved(SLOW, LIBRARY, asker("ann")));
    assertEquals("the proof was stopped after 1 seconds", late.getMessage());
    assertTrue(late.report().hint().contains("rungbook.proof.saved-seconds"), late.report().hint());
    var draft = assertThrows(ProblemException.class, () -> service.draft(SLOW, asker("ann")));
    assertTrue(draft.report().hint().contains("rungbook.proof.draft-seconds"), draft.report().hint());
  }

  @Test
  void whoAsksForASavedTreeAndGetsNoAnswerInTimeMayAskAgainWhileItGoesOn() throws Exception {
    service = service(new ProofSettings(1, 1, Duration.ofMinutes(5), Duration.ofMinutes(5), Duration.ofMillis(200)));
    var late = assertThrows(ProblemException.class, () -> service.saved(SLOW, LIBRARY, asker("ann")));
    assertTrue(late.report().hint().startsWith("ask again"), late.report().hint());
    assertEquals(1, service.load());
    assertThrows(ProblemException.class, () -> service.saved(SLOW, LIBRARY, asker("bob")));
    assertEquals(1, proofs.get());
  }

  @Test
  void aProofThatWasInterruptedFromElsewhereIsAProblemAndNoFailure() {
    service = new ProofService(() -> LIBRARY, (tree, library) -> {
      throw new CancellationException("given up");
    }, SETTINGS);
    var stopped = assertThrows(ProblemException.class, () -> service.saved(QUICK, LIBRARY, asker("ann")));
    assertEquals("the proof was stopped with it", stopped.getMessage());
  }

  /** Ten conductors, each on or off where the reading is taken: 1,024 states with 60 faults, some minutes of work. */
  @Test
  void aRealProofOfAThousandStatesStopsWithinASecondAndTheSystemStaysOfUse() throws Exception {
    var library = StarterLibrary.LIBRARY;
    var large = LibraryCompiler.compile("large", new Source("trees/large.md", LargeTree.TEXT), library);
    var small = library.tree("contactor-buzzes-control-voltage-low").orElseThrow();
    service = new ProofService(() -> library, ProofService.provenBy(new Prover(StarterProofs.FEW)), SETTINGS);
    var gone = new Gone();
    var slow = ask(() -> service.draft(large, new Asker("ann", gone.actions::add)));
    Thread.sleep(1_500);
    assertTrue(service.saved(small, library, asker("bob")).proved().isPresent());
    assertFalse(slow.isDone(), () -> slow.join().toString());
    var from = System.nanoTime();
    gone.now();
    idle();
    assertTrue(System.nanoTime() - from < TimeUnit.SECONDS.toNanos(5));
    assertEquals("nobody waited for this proof any more", problem(slow));
    assertTrue(service.draft(small, asker("bob")).proved().isPresent());
  }

  /** An asker whose connection ends when the test says so. */
  private static final class Gone {
    private final List<Runnable> actions = Collections.synchronizedList(new ArrayList<>());

    void now() throws InterruptedException {
      for (int i = 0; i < 500 && actions.isEmpty(); i++) {
        Thread.sleep(10);
      }
      actions.forEach(Runnable::run);
    }
  }

  private static Asker asker(String author) {
    return new Asker(author, action -> {});
  }

  private static CompletableFuture<Proving.Result> ask(Supplier<Proving.Result> question) {
    var answer = new CompletableFuture<Proving.Result>();
    new Thread(() -> {
      try {
        answer.complete(question.get());
      } catch (RuntimeException failed) {
        answer.completeExceptionally(failed);
      }
    }, "asker").start();
    return answer;
  }

  private static String problem(CompletableFuture<Proving.Result> answer) {
    var failure = assertThrows(CompletionException.class, () -> answer.orTimeout(10, TimeUnit.SECONDS).join());
    return ((ProblemException) failure.getCause()).getMessage();
  }

  private static CompiledTree tree(String id) {
    return LibraryCompiler.compile(id, new Source("trees/" + id + ".md", "---\ntitle: T\ncomplaint: C\n---\n"),
        LIBRARY);
  }
}
