package rungbook.store.document;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungbook.store.document.Chain.Hash;
import rungbook.store.document.Revision.Change;

class ChainTest {
  private static final DocumentPath PATH = new DocumentPath("trees/a.md");
  private static final Instant AT = Instant.ofEpochMilli(1_700_000_000_000L);
  private final Revision first = revision(1, "one", Hash.NONE);
  private final Revision second = revision(2, "two", first.hash());

  @Test
  void anUntouchedChainHolds() {
    assertEquals(Optional.empty(), firstBroken(List.of(first, second)));
  }

  @Test
  void aChangedTextBreaksTheChainWhereItStands() {
    assertEquals(Optional.of(1), firstBroken(List.of(withText(first, "other"), second)));
    assertEquals(Optional.of(2), firstBroken(List.of(first, withText(second, "other"))));
  }

  @Test
  void aRevisionTakenOutBreaksTheChain() {
    assertEquals(Optional.of(1), firstBroken(List.of(second)));
  }

  @Test
  void aRewrittenParentIsNoticedByItsChild() {
    assertEquals(Optional.of(2), firstBroken(List.of(revision(1, "other", Hash.NONE), second)));
  }

  @Test
  void movingLettersBetweenFieldsChangesTheHash() {
    var hash = Chain.of(PATH, 1, Change.WRITTEN, "ab", "c", AT, Hash.NONE, new byte[0]);
    assertNotEquals(hash, Chain.of(PATH, 1, Change.WRITTEN, "a", "bc", AT, Hash.NONE, new byte[0]));
  }

  // computed apart with Python's hashlib: each field as its 4-byte big-endian length and its UTF-8, the content as its
  // own hash
  @Test
  void theHashIsTheOneComputedByAnotherProgram() {
    assertEquals("a8ae26e71218e9e6e625ca357143e6a5a602246cc076796188757d8f6028df2a", first.hash().hex());
  }

  private static Optional<Integer> firstBroken(List<Revision> oldestFirst) {
    var check = new Chain.Check();
    return oldestFirst.stream().allMatch(check::holds) ? Optional.empty() : Optional.of(check.number());
  }

  private static Revision revision(int number, String text, Hash parent) {
    var content = text.getBytes(UTF_8);
    var hash = Chain.of(PATH, number, Change.WRITTEN, "Odalys", "why", AT, parent, content);
    return new Revision(PATH, number, Change.WRITTEN, "Odalys", "why", AT, parent, hash, content);
  }

  private static Revision withText(Revision r, String text) {
    return new Revision(r.path(), r.number(), r.change(), r.author(), r.message(), r.at(), r.parent(), r.hash(),
        text.getBytes(UTF_8));
  }
}
