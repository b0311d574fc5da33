package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PackAndVerifyTest {

  @TempDir
  private Path folder;

  @BeforeEach
  void writeTwoTrees() {
    Texts.write(folder.resolve("lib/trees/a.md"), Texts.SOUND);
    Texts.write(folder.resolve("lib/trees/b.md"), Texts.SOUND);
  }

  private List<String> packed(String to) throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve(to))) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void aFolderBecomesPacksWithAnIndexInExport() throws IOException {
    assertEquals(0, Run.in(folder, "pack", "lib").exit());
    assertTrue(packed("export").containsAll(List.of("a.html", "b.html", "index.html")), packed("export").toString());
  }

  @Test
  void aFileBecomesAPackThatTravelsAloneAndVerifies() throws IOException {
    assertEquals(0, Run.in(folder, "pack", "lib/trees/a.md", "--to", "out").exit());
    assertEquals(1, packed("out").size());
    Run run = Run.in(folder, "verify", "out/" + packed("out").get(0));
    assertEquals(0, run.exit(), run.out());
    assertTrue(run.out().contains(": intact, digest "), run.out());
  }

  @Test
  void oneChangedByteIsFound() throws IOException {
    Run.in(folder, "pack", "lib/trees/a.md", "--to", "out");
    Path pack = folder.resolve("out").resolve(packed("out").get(0));
    Files.writeString(pack, Files.readString(pack).replace("status light", "status night"));
    Run run = Run.in(folder, "verify", pack.toString());
    assertEquals(1, run.exit());
    assertTrue(run.out().contains(": altered, it says it is "), run.out());
  }

  @Test
  void aFileThatIsNoPackIsNamed() {
    Texts.write(folder.resolve("page.html"), "<!doctype html>");
    assertEquals(new Run(1, "page.html: not a pack\n", ""), Run.in(folder, "verify", "page.html"));
  }

  @Test
  void nothingIsWrittenWhileAnErrorStands() {
    Texts.write(folder.resolve("lib/trees/b.md"), Texts.BROKEN);
    Run run = Run.in(folder, "pack", "lib");
    assertEquals(1, run.exit());
    assertTrue(run.out().contains("unknown-step") && run.out().endsWith("nothing packed: mend the errors first\n"), run.out());
    assertFalse(Files.exists(folder.resolve("export")));
  }

  @Test
  void twoLibrariesAreTwoRuns() {
    Texts.write(folder.resolve("other/trees/a.md"), Texts.SOUND);
    assertEquals(2, Run.in(folder, "pack", "lib", "other").exit());
  }
}
