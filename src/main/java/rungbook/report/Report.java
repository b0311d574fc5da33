package rungbook.report;

import java.util.List;
import rungbook.source.Problem;
import rungbook.source.Severity;
import rungbook.source.Silenced;
import rungbook.source.Wording;

/**
 * The result of a run.
 *
 * @param files how many files were looked at
 * @param problems in the order in which they are shown; a source's name is the file as people see it
 * @param silenced what is not shown, and does not make the run less clean
 */
public record Report(int files, List<Problem> problems, List<Silenced> silenced) {

  public Report {
    problems = List.copyOf(problems);
    silenced = List.copyOf(silenced);
  }

  public long count(Severity severity) {
    return problems.stream().filter(problem -> Wording.of(problem).severity() == severity).count();
  }

  /** Whether there are no errors and no warnings. */
  public boolean isClean() {
    return count(Severity.ERROR) + count(Severity.WARNING) == 0;
  }
}
