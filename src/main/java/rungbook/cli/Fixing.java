package rungbook.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungbook.source.Edit;
import rungbook.source.Fix;
import rungbook.source.Problem;
import rungbook.source.Source;

/**
 * Applies the fixes of a check to the files. Replaces each file atomically, and skips a file that has changed since the
 * check. If two fixes overlap, applies the first.
 */
final class Fixing {

  private final Console terminal;
  private final Map<String, Changes> byFile = new LinkedHashMap<>();

  private Fixing(Console terminal) {
    this.terminal = terminal;
  }

  private record Changes(Source source, List<Problem> problems, List<Edit> edits) {}

  /**
   * Applies all fixes and reports them.
   *
   * @param problems with sources named for display
   * @return the number of applied fixes
   */
  static int fix(List<Problem> problems, Console terminal) throws IOException {
    Fixing fixing = new Fixing(terminal);
    for (Problem problem : problems) {
      problem.fix().ifPresent(fix -> fixing.plan(problem, fix));
    }
    int made = 0;
    for (Changes changes : fixing.byFile.values()) {
      made += fixing.write(changes);
    }
    terminal.err().flush();
    return made;
  }

  /** Every edit of a fix is in the file of its problem. */
  private void plan(Problem problem, Fix fix) {
    Changes changes = byFile.computeIfAbsent(problem.source().name(),
        name -> new Changes(problem.source(), new ArrayList<>(), new ArrayList<>()));
    if (fix.edits().stream().anyMatch(edit -> changes.edits().stream().anyMatch(other -> touch(edit, other)))) {
      say(problem, "not fixed: another fix changes the same place; check again");
    } else {
      changes.problems().add(problem);
      changes.edits().addAll(fix.edits());
    }
  }

  private static boolean touch(Edit one, Edit other) {
    return one.span().start() <= other.span().end() && other.span().start() <= one.span().end();
  }

  private int write(Changes changes) throws IOException {
    Path file = terminal.folder().resolve(changes.source().name());
    byte[] before = Files.readAllBytes(file);
    byte[] checked = changes.source().text().getBytes(StandardCharsets.UTF_8);
    int mark = before.length - checked.length;
    boolean same = (mark == 0 || mark == 3) && Arrays.equals(before, mark, before.length, checked, 0, checked.length);
    if (!same) {
      changes.problems()
          .forEach(problem -> say(problem, "not fixed: the file has changed since the check; check again"));
      return 0;
    }
    byte[] text = Fix.apply(changes.source().text(), changes.edits()).getBytes(StandardCharsets.UTF_8);
    byte[] after = Arrays.copyOf(before, mark + text.length);
    System.arraycopy(text, 0, after, mark, text.length);
    replace(file, after);
    changes.problems().forEach(problem -> say(problem, "fixed: " + problem.fix().orElseThrow().label()));
    return changes.problems().size();
  }

  /** Writes a temporary file and renames it, so a reader sees either the old text or the new one. */
  private static void replace(Path file, byte[] text) throws IOException {
    Path copy = Files.createTempFile(file.getParent(), "." + file.getFileName(), ".new");
    try {
      // for its permissions
      Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.COPY_ATTRIBUTES);
      Files.write(copy, text);
      move(copy, file);
    } finally {
      Files.deleteIfExists(copy);
    }
  }

  private static void move(Path copy, Path file) throws IOException {
    try {
      Files.move(copy, file, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(copy, file, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private void say(Problem problem, String what) {
    terminal.err().println(problem.source().name() + ":" + problem.place() + ": " + problem.code() + " " + what);
  }
}
