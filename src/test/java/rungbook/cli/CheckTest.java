package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckTest {

  @TempDir
  private Path folder;

  private void write(String file, String text) {
    Texts.write(folder.resolve(file), text);
  }

  @Test
  void aCleanTreeEndsWithZero() {
    write("a.md", Texts.SOUND);
    assertEquals(new Run(0, "1 file checked: no problems\n", ""), Run.in(folder, "check", "a.md"));
  }

  @Test
  void aProblemEndsWithOneAndStandsAtItsPlace() {
    write("a.md", Texts.BROKEN);
    Run run = Run.in(folder, "check", "a.md");
    assertEquals(1, run.exit());
    assertTrue(run.out().startsWith("a.md:13:14: error unknown-step: "), run.out());
  }

  @Test
  void notesAloneEndWithZero() {
    write("a.md", Texts.SOUND + "\nHTML <b>in prose</b>.\n");
    Run run = Run.in(folder, "check", "a.md");
    assertEquals(0, run.exit(), run.out());
    assertTrue(run.out().endsWith("1 file checked: 2 notes\n"), run.out());
  }

  private static String quiet(String text) {
    return text.replace("look: status light\n", "look: status light\nquiet: html-shown-as-text, because it reads so\n")
        .replace("- yes:", "Press <b>gently</b>.\n\n- yes:");
  }

  @Test
  void whatIsSilencedIsCountedAndNotShown() {
    write("a.md", quiet(Texts.SOUND));
    assertEquals(new Run(0, "1 file checked: no problems, 2 silenced\n", ""), Run.in(folder, "check", "a.md"));
  }

  @Test
  void aLineThatSilencesNothingEndsWithOneAndIsFixed() throws IOException {
    write("a.md", quiet(Texts.SOUND).replace("<b>gently</b>", "gently"));
    Run run = Run.in(folder, "check", "a.md");
    assertEquals(1, run.exit());
    assertTrue(run.out().contains("a.md:10:8: warning quiet-unused: "), run.out());
    assertEquals(0, Run.in(folder, "check", "--fix", "a.md").exit());
    assertFalse(Files.readString(folder.resolve("a.md")).contains("quiet"));
  }

  @Test
  void jsonTellsWhatIsSilencedWhereAndWhy() throws IOException {
    write("a.md", quiet(Texts.SOUND));
    JsonNode report = new ObjectMapper().readTree(Run.in(folder, "check", "a.md", "--format", "json").out());
    assertEquals(2, report.at("/counts/silenced").asInt());
    assertEquals(0, report.get("problems").size());
    JsonNode first = report.at("/silenced/0");
    assertEquals("html-shown-as-text 13 it reads so 10", first.get("code").asText() + " " + first.get("line") + " "
        + first.at("/quiet/reason").asText() + " " + first.at("/quiet/line"));
    assertEquals("a.md", first.get("file").asText());
    assertEquals("a.md", first.at("/quiet/file").asText());
  }

  @Test
  void everyFileOfAFolderIsReportedEvenWhenOneCannotBeRead() throws IOException {
    write("a.md", Texts.BROKEN);
    Files.write(folder.resolve("b.md"), new byte[] {'#', (byte) 0xFF});
    write("below/c.md", Texts.BROKEN);
    Run run = Run.in(folder, "check", ".");
    assertTrue(run.out().contains("a.md:13:14: error unknown-step") && run.out().contains("b.md:1:2: error not-utf8")
        && run.out().contains("below/c.md:13:14: error unknown-step"), run.out());
    assertTrue(run.out().endsWith("3 files checked: 3 errors\n"), run.out());
  }

  @Test
  void aFileIsCheckedWithinItsLibrary() {
    write("lib/shared/cautions/own-caution.md", "---\ntitle: Own caution\nlevel: danger\n---\n\nCareful.\n");
    String cautious = Texts.SOUND.replace("look: status light\n", "look: status light\ncautions: own caution\n");
    write("lib/trees/a.md", cautious);
    write("elsewhere/a.md", cautious);
    assertEquals(0, Run.in(folder, "check", "lib/trees/a.md").exit());
    assertTrue(Run.in(folder, "check", "elsewhere/a.md").out().contains("unknown-caution"));
  }

  @Test
  void aTreeInNoLibraryMayNameWhatTheProgramShips() {
    write("a.md", Texts.SOUND.replace("look: status light\n", "look: status light\ncautions: moving blower\n"));
    assertEquals(0, Run.in(folder, "check", "a.md").exit());
  }

  @Test
  void aLibrarysOtherPagesAreNoTrees() {
    write("lib/README.md", "# Notes\n");
    write("lib/trees/a.md", Texts.SOUND);
    assertEquals("1 file checked: no problems\n", Run.in(folder, "check", "lib").out());
    assertEquals("1 file checked: no problems\n", Run.in(folder.resolve("lib"), "check", "trees").out());
  }

  @Test
  void aTreeBelowTheTreesFolderIsNotForgotten() {
    write("lib/trees/a.md", Texts.SOUND);
    write("lib/trees/drafts/b.md", Texts.BROKEN);
    assertTrue(Run.in(folder, "check", "lib").out().contains("lib/trees/drafts/b.md:13:14: error unknown-step"));
  }

  @Test
  void aFragmentsProblemsShowWhenItIsAskedFor() {
    write("lib/trees/a.md", Texts.SOUND.replace("fault: board dead", "fault: board dead\nfalt: x"));
    write("lib/shared/fragments/f.md", "no front matter\n");
    Run run = Run.in(folder, "check", "lib/shared/fragments/f.md");
    assertTrue(run.out().contains("lib/shared/fragments/f.md:1:1: error key-missing"), run.out());
    assertFalse(run.out().contains("trees/a.md"), run.out());
  }

  @Test
  void aLooseTreesPictureIsLookedForBesideIt() throws IOException {
    write("a.md",
        Texts.SOUND.replace("## Works", "![board](pictures/board.svg) ![gone](pictures/gone.svg)\n\n## Works"));
    write("pictures/board.svg", "<svg xmlns='http://www.w3.org/2000/svg'/>");
    Run run = Run.in(folder, "check", "a.md");
    assertTrue(run.out().contains("picture-missing") && run.out().endsWith("1 file checked: 1 error\n"), run.out());
  }

  @Test
  void looseTreesOfOneFolderMayLeadToEachOther() {
    write("a.md", Texts.SOUND.replace("[Dark](#dark)", "[B](b.md)")
        .replace("## Dark\n\n```finding\nfault: board dead\nrefer: a senior technician\n```\n", ""));
    write("b.md", Texts.SOUND);
    assertEquals(0, Run.in(folder, "check", "a.md").exit(), Run.in(folder, "check", "a.md").out());
  }

  @Test
  void theSameFileNamedTwiceIsCheckedOnce() {
    write("a.md", Texts.BROKEN);
    assertTrue(Run.in(folder, "check", "a.md", ".").out().endsWith("1 file checked: 1 error\n"));
  }

  @Test
  void aFixIsMadeInTheFileAndTheRestIsReported() throws IOException {
    write("a.md", Texts.BROKEN);
    Run run = Run.in(folder, "check", "--fix", "a.md");
    assertEquals(0, run.exit(), run.out());
    assertEquals("1 file checked: no problems\n", run.out());
    assertTrue(run.err().startsWith("a.md:13:14: unknown-step fixed: write `#"), run.err());
    assertEquals(Texts.SOUND, Files.readString(folder.resolve("a.md")));
    try (var left = Files.list(folder)) {
      assertEquals(1, left.count(), "no copy is left beside it");
    }
  }

  @Test
  void aByteOrderMarkAndThePermissionsOfAFixedFileStay() throws IOException {
    write("a.md", "\uFEFF" + Texts.BROKEN);
    var permissions = java.nio.file.attribute.PosixFilePermissions.fromString("rw-r-----");
    Files.setPosixFilePermissions(folder.resolve("a.md"), permissions);
    assertEquals(0, Run.in(folder, "check", "--fix", "a.md").exit());
    assertEquals("\uFEFF" + Texts.SOUND, Files.readString(folder.resolve("a.md")));
    assertEquals(permissions, Files.getPosixFilePermissions(folder.resolve("a.md")));
  }

  @Test
  void nothingIsWrittenWithoutAskingOrWithoutAFix() throws IOException {
    write("a.md", Texts.BROKEN);
    Run.in(folder, "check", "a.md");
    assertEquals(Texts.BROKEN, Files.readString(folder.resolve("a.md")));
    assertEquals(2, Run.in(folder, "check", "--fix", "--watch", "a.md").exit());
  }
}
