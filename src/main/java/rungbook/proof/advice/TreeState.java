package rungbook.proof.advice;

import java.util.List;
import java.util.Optional;
import rungbook.source.Problem;
import rungbook.source.Severity;
import rungbook.source.Wording;
import rungbook.text.English;

/** The one state of a tree, made of its check and, where there is one, its proof. */
public sealed interface TreeState {

  /** It cannot become a pack. */
  record Errors(int count) implements TreeState {}

  /** It has no error, and no proof yet. */
  record Warnings(int count) implements TreeState {}

  /** The check finds nothing wrong; there is no proof yet, or none is possible. */
  record Checked() implements TreeState {}

  /** It is proved, and check and proof together ask for something. */
  record ToDo(int count) implements TreeState {}

  /** The check finds nothing wrong, and the proof asks for nothing. */
  record Proved() implements TreeState {}

  /**
   * @param checked the problems of the check that the text does not silence
   * @param advice of the proof; empty without one
   */
  static TreeState of(List<Problem> checked, Optional<Advice> advice) {
    int errors = count(checked, Severity.ERROR);
    int warnings = count(checked, Severity.WARNING);
    if (errors > 0) {
      return new Errors(errors);
    }
    int toDo = warnings + advice.map(one -> one.first().size()).orElse(0);
    if (advice.isPresent()) {
      return toDo > 0 ? new ToDo(toDo) : new Proved();
    }
    return warnings > 0 ? new Warnings(warnings) : new Checked();
  }

  private static int count(List<Problem> problems, Severity severity) {
    return (int) problems.stream().filter(problem -> Wording.of(problem).severity() == severity).count();
  }

  /** One sign, so that the state does not show by color alone. */
  default String symbol() {
    return this instanceof Errors ? "✕" : this instanceof Proved ? "✓" : this instanceof Checked ? "○" : "!";
  }

  default String words() {
    if (this instanceof Errors errors) {
      return English.counted(errors.count(), "error");
    }
    if (this instanceof ToDo toDo) {
      return "Proved, " + English.counted(toDo.count(), "thing") + " to do";
    }
    return this instanceof Warnings warnings ? English.counted(warnings.count(), "warning") + ", not proved"
        : this instanceof Proved ? "Proved" : "Checked, not proved";
  }
}
