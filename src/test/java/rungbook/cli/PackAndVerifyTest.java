package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.RandomAccessFile;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungbook.library.TwoFuses;
import rungbook.pack.page.Edition;
import rungbook.report.Style;

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
    assertTrue(run.out()
        .matches("(?s)out/a-[0-9a-f]{24}\\.html: intact\n  digest: ([0-9a-f]{4} ){5}[0-9a-f]{4}\n  file: a\\.html\n"
            + "  title: .*\n  meter: .*\n  proof: not in this pack\n  revision: draft\n  released: not released\n"),
        run.out());
  }

  @Test
  void aFolderBecomesOneBook() throws IOException {
    Run run = Run.in(folder, "pack", "lib", "--book", "out/all.epub");
    assertEquals(0, run.exit(), run.out());
    assertTrue(run.out().matches("out/all\\.epub, \\d+ KB\ndigest ([0-9a-f]{4} ){5}[0-9a-f]{4}\n"), run.out());
    assertEquals(List.of("all.epub"), packed("out"));
  }

  @Test
  void aFolderBecomesOnePage() throws IOException {
    assertEquals(0, Run.in(folder, "key", "company").exit());
    Run run = Run.in(folder, "pack", "lib", "--library", "out/all.html", "--sign", "company.key");
    assertEquals(0, run.exit(), run.out());
    assertEquals(List.of("all.html", "all.html.sig"), packed("out"));
    Run verified = Run.in(folder, "verify", "out/all.html", "--key", "company.pub");
    assertEquals(0, verified.exit(), verified.out());
    String digest = run.out().substring(run.out().indexOf("digest ") + 7).strip();
    assertTrue(verified.out().startsWith("out/all.html: intact\n  digest: " + digest
        + "\n  file: all-trees.html\n  title: Rungbook library\n"), verified.out());
  }

  @Test
  void aBookHasTheNameOfABookAndAFileOfItsOwn() throws IOException {
    Files.createDirectories(folder.resolve("here.epub"));
    for (List<String> wrong : List.of(List.of("--book", "all.zip"), List.of("--book", "here.epub"),
        List.of("--book", "all.epub", "--to", "out"), List.of("--book", "a\0.epub"),
        List.of("--library", "all.epub"), List.of("--library", "all.html", "--book", "all.epub"))) {
      List<String> arguments = Stream.concat(Stream.of("pack", "lib"), wrong.stream()).toList();
      assertEquals(2, Run.in(folder, arguments.toArray(String[]::new)).exit(), wrong.toString());
    }
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @Test
  void aSignedBookHasItsSignatureBesideIt() throws IOException {
    assertEquals(0, Run.in(folder, "key", "company").exit());
    assertEquals(0, Run.in(folder, "pack", "lib", "--book", "out/all.epub", "--sign", "company.key").exit());
    assertEquals(List.of("all.epub", "all.epub.sig"), packed("out"));
    assertEquals(64, Files.size(folder.resolve("out/all.epub.sig")));
  }

  /** Each of the three faults leaves the lamp dark, and the tree looks at the lamp. */
  @Test
  void aPackCanSayWhatItsProofFound() throws IOException {
    Texts.write(folder.resolve("lamp").resolve(TwoFuses.SYSTEM_PATH), TwoFuses.SYSTEM);
    Texts.write(folder.resolve("lamp").resolve(TwoFuses.TREE_PATH), TwoFuses.LOOKING_TREE);
    for (String to : List.of("once", "again")) {
      assertEquals(0, Run.in(folder, "pack", "lamp/" + TwoFuses.TREE_PATH, "--proved", "--to", to).exit());
    }
    String name = packed("once").get(0);
    assertEquals(packed("once"), packed("again"));
    assertArrayEquals(Files.readAllBytes(folder.resolve("once/" + name)),
        Files.readAllBytes(folder.resolve("again/" + name)));
    String out = Run.in(folder, "verify", "once/" + name).out();
    assertTrue(out.contains("  proof: Proved (on Lamp and 1 variant of it; finds 100 % of the system's faults)\n"),
        out);
  }

  /** With 13 switches before a load that may be shorted there are 8,192 positions, twice what is tried. */
  @Test
  void onlyAPackOfASystemThatCanBeSolvedLeadsToAPracticePage() throws IOException {
    Texts.write(folder.resolve("lamp").resolve(TwoFuses.TREE_PATH), TwoFuses.LOOKING_TREE);
    Texts.write(folder.resolve("lamp").resolve(TwoFuses.SYSTEM_PATH), TwoFuses.SYSTEM);
    assertEquals(0, Run.in(folder, "pack", "lamp", "--to", "small").exit());
    assertTrue(packed("small").contains("practice-lamp.html"), packed("small").toString());
    assertTrue(Files.readString(folder.resolve("small/dark.html")).contains("href=\"practice-lamp.html\""));
    Texts.write(folder.resolve("lamp").resolve(TwoFuses.SYSTEM_PATH), withSwitches(13));
    assertEquals(0, Run.in(folder, "pack", "lamp", "--to", "large").exit());
    assertFalse(packed("large").contains("practice-lamp.html"), packed("large").toString());
    assertFalse(Files.readString(folder.resolve("large/dark.html")).contains("practice-lamp"));
  }

  private static String withSwitches(int count) {
    var controls = new StringBuilder("```controls\n");
    var points = new StringBuilder("```points\n");
    var parts = new StringBuilder("```parts\n");
    for (int i = 1; i <= count; i++) {
      controls.append("key ").append(i).append(": off, on, at bench\n");
      points.append("K").append(i).append(": at bench, 120 V\n");
      parts.append("key ").append(i).append(" contact: contact, ").append(i == 1 ? "A" : "K" + (i - 1)).append(" to K")
          .append(i).append(", closed when key ").append(i).append(" on\n");
    }
    parts.append("heater: load, 120 V, 60 W, K").append(count).append(" to N\n");
    return TwoFuses.SYSTEM.replace("```controls\n", controls).replace("```points\n", points)
        .replaceFirst("```parts\n", parts.toString())
        .replace("```faults\n", "```faults\nheater shorted: short K" + count + " to N\n");
  }

  @Test
  void aTreeThatCannotBeProvedSaysSoInItsPack() throws IOException {
    assertEquals(0, Run.in(folder, "pack", "lib/trees/a.md", "--proved", "--to", "out").exit());
    String out = Run.in(folder, "verify", "out/" + packed("out").get(0)).out();
    assertTrue(out.contains("\n  proof: Checked, not proved\n"), out);
  }

  @Test
  void oneChangedByteIsFound() throws IOException {
    Run.in(folder, "pack", "lib/trees/a.md", "--to", "out");
    Path pack = folder.resolve("out").resolve(packed("out").get(0));
    Files.writeString(pack, Files.readString(pack).replace("status light", "status night"));
    Run run = Run.in(folder, "verify", pack.toString());
    assertEquals(1, run.exit());
    assertTrue(run.out().endsWith(": altered: its content does not give the digest that it states\n"), run.out());
  }

  @Test
  void aFileThatIsNoPackIsNamed() {
    Texts.write(folder.resolve("page.html"), "<!doctype html>");
    assertEquals(new Run(1, "page.html: not a pack\n", ""), Run.in(folder, "verify", "page.html"));
  }

  @Test
  void whatNeverEndsOrIsTooLargeIsNotRead() throws Exception {
    assertEquals(0, new ProcessBuilder("mkfifo", folder.resolve("pipe").toString()).start().waitFor());
    try (var file = new RandomAccessFile(folder.resolve("huge.html").toFile(), "rw")) {
      file.setLength(1L << 40); // takes no room on the disk
    }
    Run run = assertTimeoutPreemptively(Duration.ofSeconds(20),
        () -> Run.in(folder, "verify", "pipe", "/dev/zero", "huge.html"));
    assertEquals(
        new Run(1, "pipe: not a pack, it is not a regular file\n/dev/zero: not a pack, it is not a regular file\n"
            + "huge.html: not a pack, it is larger than 100 MB\n", ""),
        run);
  }

  @Test
  void aFolderToVerifyIsAnsweredWithTheFilesToName() {
    Run run = Run.in(folder, "verify", "lib/");
    assertEquals(2, run.exit());
    assertEquals("rungbook: `lib/` is a folder\n  hint: name the packs in it: `lib/*.html`\n", run.err());
  }

  @Test
  void aLinkInTheTargetIsReplacedAndNotFollowed() throws IOException {
    Path elsewhere = Files.writeString(folder.resolve("elsewhere.txt"), "mine");
    Files.createDirectory(folder.resolve("export"));
    for (String name : List.of("a.html", "index.html", ".a.html.part")) {
      Files.createSymbolicLink(folder.resolve("export").resolve(name), elsewhere);
    }
    assertEquals(0, Run.in(folder, "pack", "lib").exit());
    assertEquals("mine", Files.readString(elsewhere));
    assertTrue(Files.isRegularFile(folder.resolve("export/a.html"), LinkOption.NOFOLLOW_LINKS));
    assertEquals(packed("export"), List.of("a.html", "b.html", "index.html", "manifest.webmanifest", "sw.js"));
  }

  /** A save between the check and the packing must not slip in unchecked. */
  @Test
  void whatIsPackedIsWhatWasChecked() throws IOException {
    Path tree = folder.resolve("lib/trees/a.md");
    Console terminal = new Console(new PrintWriter(new StringWriter()), new PrintWriter(new StringWriter()),
        Style.PLAIN, false, folder, Optional.empty(), Optional.empty());
    Batch batch = Batch.of(List.of(tree), Optional.empty()).iterator().next();
    Checker.Compiled compiled = Checker.compile(batch, terminal);
    Texts.write(tree, Texts.BROKEN);
    assertEquals(List.of(), compiled.report().problems());
    assertEquals(Texts.SOUND, compiled.trees().get(0).tree().source().text());
    Files.delete(tree);
    assertEquals(1, PackCommand.packs(compiled, any -> Edition.draft()).size());
  }

  @Test
  void nothingIsWrittenWhileAnErrorStands() {
    Texts.write(folder.resolve("lib/trees/b.md"), Texts.BROKEN);
    Run run = Run.in(folder, "pack", "lib");
    assertEquals(1, run.exit());
    assertTrue(run.out().contains("unknown-step") && run.out().endsWith("nothing packed: fix the errors first\n"),
        run.out());
    assertFalse(Files.exists(folder.resolve("export")));
  }

  @Test
  void twoLibrariesAreTwoRuns() {
    Texts.write(folder.resolve("other/trees/a.md"), Texts.SOUND);
    assertEquals(2, Run.in(folder, "pack", "lib", "other").exit());
  }
}
