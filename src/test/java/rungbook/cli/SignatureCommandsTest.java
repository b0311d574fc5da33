package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A company signs its packs and a technician checks them, from the shell. */
class SignatureCommandsTest {

  @TempDir
  private Path folder;

  @BeforeEach
  void makeAKeyAndSign() {
    Texts.write(folder.resolve("lib/trees/a.md"), Texts.SOUND);
    assertEquals(0, Run.in(folder, "key", "company").exit());
    assertEquals(0, Run.in(folder, "pack", "lib", "--sign", "company.key").exit());
  }

  @Test
  void aSignedPackVerifiesWithTheFingerprintOfTheKey() {
    Run run = Run.in(folder, "verify", "export/a.html", "export/index.html", "--key", "company.pub");
    assertEquals(0, run.exit(), run.out());
    assertTrue(run.out().matches("(?s).*signature: by the key ([0-9a-f]{4} ){5}[0-9a-f]{4}\n.*"), run.out());
  }

  @Test
  void theSameKeyGivesTheSameSignature() throws IOException {
    byte[] before = Files.readAllBytes(folder.resolve("export/a.html.sig"));
    assertEquals(64, before.length);
    Run.in(folder, "pack", "lib", "--sign", "company.key");
    assertArrayEquals(before, Files.readAllBytes(folder.resolve("export/a.html.sig")));
  }

  @Test
  void anotherKeysOrNoSignatureIsNotEnough() throws IOException {
    Run.in(folder, "key", "other");
    Run other = Run.in(folder, "verify", "export/a.html", "--key", "other.pub");
    assertEquals(1, other.exit());
    assertTrue(other.out().endsWith("  signature: not by this key, or of another file\n"), other.out());
    Files.delete(folder.resolve("export/a.html.sig"));
    Run none = Run.in(folder, "verify", "export/a.html", "--key", "company.pub");
    assertEquals(1, none.exit());
    assertTrue(none.out().endsWith("  signature: none; there is no export/a.html.sig\n"), none.out());
  }

  /** What somebody forges: a new digest in the right places, so that the pack verifies by itself. */
  @Test
  void aPackMadeAnewFromAChangedTreeIsNotSigned() {
    Texts.write(folder.resolve("lib/trees/a.md"), Texts.SOUND + "\nA line more.\n");
    assertEquals(0, Run.in(folder, "pack", "lib").exit());
    assertEquals(0, Run.in(folder, "verify", "export/a.html").exit());
    assertEquals(1, Run.in(folder, "verify", "export/a.html", "--key", "company.pub").exit());
  }

  @Test
  void theSecretHalfIsItsOwnersAlone() throws IOException {
    assertEquals("rw-------",
        PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve("company.key"))));
  }

  @Test
  void aKeyIsNeverReplaced() throws IOException {
    String before = Files.readString(folder.resolve("company.key"));
    Run again = Run.in(folder, "key", "company");
    assertEquals(2, again.exit());
    assertEquals("rungbook: `company.key` exists, and a key is never replaced\n"
        + "  hint: choose another name, or move the file\n", again.err());
    assertEquals(before, Files.readString(folder.resolve("company.key")));
  }

  @Test
  void aKeyNeedsAFolderThatIsThere() {
    Run run = Run.in(folder, "key", "nowhere/company");
    assertEquals(2, run.exit());
    assertEquals("rungbook: there is no folder for `nowhere/company.key`\n  hint: make the folder first\n", run.err());
  }

  @Test
  void aWrongKeyFileIsNamedWithTheCure() {
    Run half = Run.in(folder, "pack", "lib", "--sign", "company.pub");
    assertEquals(2, half.exit());
    assertEquals("rungbook: `company.pub` cannot be used as a key: there is no private key in it\n"
        + "  hint: name the `.key` file that `rungbook key` wrote\n", half.err());
    assertEquals(2, Run.in(folder, "verify", "export/a.html", "--key", "lib").exit());
    assertEquals(2, Run.in(folder, "verify", "export/a.html", "--key", "none.pub").exit());
  }
}
