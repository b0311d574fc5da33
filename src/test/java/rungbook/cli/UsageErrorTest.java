package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A command line that makes no sense ends with 2, says so on the error stream, and names what came near. */
class UsageErrorTest {

  @TempDir
  private Path folder;

  private void error(String says, String hint, String... arguments) {
    assertEquals(new Run(2, "", "rungbook: " + says + "\n  hint: " + hint + "\n"), Run.in(folder, arguments));
  }

  @Test
  void anUnknownCommand() {
    error("unknown command `chekc`", "write `check`", "chekc");
  }

  @Test
  void noCommand() {
    assertEquals(2, Run.in(folder).exit());
  }

  @Test
  void anUnknownOption() {
    error("unknown option `--formt`", "write `--format`", "check", "--formt", "json", ".");
  }

  @Test
  void anUnknownFormat() {
    error("unknown format `jsn`", "write `json`", "check", "--format", "jsn", ".");
    error("unknown format `spreadsheet`", "write one of text, json, sarif", "check", "--format", "spreadsheet", ".");
  }

  @Test
  void aMissingPath() {
    error("`check` needs PATH", "see `rungbook check --help`", "check");
  }

  @Test
  void aPathThatIsNotThere() {
    Texts.write(folder.resolve("no-cooling.md"), Texts.SOUND);
    error("there is no `no-colling.md`", "write `no-cooling.md`", "check", "no-colling.md");
    error("there is no `gone/away.md`", "look for the folder first: `gone` is not there", "check", "gone/away.md");
  }

  @Test
  void aFileThatIsNoMarkdown() {
    Texts.write(folder.resolve("board.svg"), "<svg/>");
    error("`board.svg` is not a Markdown file", "name a file that ends in `.md`, or a folder of them", "check",
        "board.svg");
  }

  @Test
  void anEmptyFolder() {
    error("`.` has no Markdown files", "name a folder of trees, or a file that ends in `.md`", "check", ".");
  }

  @Test
  void watchingForAProgram() {
    error("`--watch` works only with the text format", "leave `--format` out", "check", "--watch", "--format", "json",
        ".");
  }

  @Test
  void anUnknownCode() {
    error("no problem is called `unknown-stp`", "write `unknown-step`", "explain", "unknown-stp");
  }
}
