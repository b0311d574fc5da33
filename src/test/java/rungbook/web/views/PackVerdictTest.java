package rungbook.web.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungbook.pack.Pack;
import rungbook.pack.PackedTree;
import rungbook.pack.onefile.LibraryFile;
import rungbook.pack.page.Edition;
import rungbook.pack.page.PackInput;
import rungbook.pack.signature.SigningKey;
import rungbook.proof.CircuitFacts;
import rungbook.tree.SingleTree;

class PackVerdictTest {
  private static final SigningKey KEY = SigningKey.random();
  private static final Pack NEW = pack(Edition.draft());
  private static final Pack OLD = pack(new Edition(Optional.of("3"), Optional.empty(), Optional.empty()));

  private static final LibraryFile LIBRARY = library(Edition.draft());

  private static LibraryFile library(Edition edition) {
    var tree = SingleTree.read("## All is well\n\n```finding\nhealthy: yes\n```\n").tree();
    var material = new PackInput(SingleTree.NOTHING_SHARED, Map.of());
    return LibraryFile.of(List.of(PackedTree.of(tree, CircuitFacts.unknown(), material, edition)), List.of(),
        material);
  }

  private static Pack pack(Edition edition) {
    var tree = SingleTree.read("## All is well\n\n```finding\nhealthy: yes\n```\n").tree();
    return Pack.of(tree, CircuitFacts.unknown(), new PackInput(SingleTree.NOTHING_SHARED, Map.of()), edition);
  }

  private static PackVerdict of(byte[] file, Optional<byte[]> signature, Optional<SigningKey> key) {
    return new PackVerdict.Question("a.html", file, signature, key.map(SigningKey::publicKey))
        .against(List.of(NEW), () -> LIBRARY);
  }

  @Test
  void theNewestPackSignedByTheServerIsGood() {
    var verdict = of(NEW.bytes(), Optional.of(KEY.sign(NEW.bytes())), Optional.of(KEY));
    assertTrue(verdict.good());
    assertEquals("Signed by this server's key.", verdict.signature());
    assertEquals("It is the newest pack of this library.", verdict.newest());
    assertEquals(NEW.shortDigest(), verdict.facts().get("Digest"));
    assertEquals("draft", verdict.facts().get("Revision"));
  }

  @Test
  void anOldPackIsIntactButNotTheNewest() {
    var verdict = of(OLD.bytes(), Optional.empty(), Optional.of(KEY));
    assertTrue(verdict.good());
    assertEquals("It is NOT the newest: the newest pack of this name has the digest " + NEW.shortDigest() + ".",
        verdict.newest());
    assertEquals("Not checked: no signature was chosen. Without one, compare the digest.", verdict.signature());
  }

  @Test
  void aFileOfAllTreesIsHeldAgainstTheLibrary() {
    var newest = of(LIBRARY.bytes(), Optional.empty(), Optional.empty());
    assertTrue(newest.good());
    assertEquals("It is the newest file of all trees of this library.", newest.newest());
    assertEquals(LIBRARY.shortDigest(), newest.facts().get("Digest"));
    var old = library(new Edition(Optional.of("3"), Optional.empty(), Optional.empty()));
    assertEquals("It is NOT the newest file of all trees of this library: that has the digest "
        + LIBRARY.shortDigest() + ".", of(old.bytes(), Optional.empty(), Optional.empty()).newest());
  }

  @Test
  void anothersSignatureIsNotGood() {
    var verdict = of(NEW.bytes(), Optional.of(SigningKey.random().sign(NEW.bytes())), Optional.of(KEY));
    assertFalse(verdict.good());
    assertTrue(verdict.signature().startsWith("NOT signed by this server's key"));
  }

  @Test
  void aServerWithoutAKeySaysSo() {
    var verdict = of(NEW.bytes(), Optional.of(KEY.sign(NEW.bytes())), Optional.empty());
    assertEquals("Not checked: this server has no key.", verdict.signature());
  }

  @Test
  void anAlteredPackAndAnythingElseAreNamed() {
    var changed = NEW.bytes().clone();
    changed[changed.length / 2] ^= 1;
    assertTrue(of(changed, Optional.empty(), Optional.of(KEY)).says().startsWith("Altered: "));
    var other = of(new byte[] {1, 2, 3}, Optional.empty(), Optional.of(KEY));
    assertEquals("Not a pack.", other.says());
    assertFalse(other.good());
  }
}
