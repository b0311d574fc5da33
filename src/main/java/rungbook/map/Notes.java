package rungbook.map;

import java.util.List;
import java.util.stream.Collectors;
import rungbook.tree.Action;
import rungbook.tree.NameRef;
import rungbook.tree.Step;

/** Short summaries of steps. */
final class Notes {
  private Notes() {}

  static String of(Step step) {
    if (step instanceof Step.MeterCheck check) {
      var leads = check.leads().stream().map(NameRef::text).collect(Collectors.joining(" to "));
      return leads.isEmpty() ? check.measured() : check.measured() + ", " + leads;
    }
    if (step instanceof Step.SenseCheck check) {
      return check.sense().word() + ": " + names(check.things());
    }
    if (step instanceof Step.End end) {
      return end.result().words();
    }
    return step instanceof Step.Finding finding ? conclusion(finding) : actions((Step.Task) step);
  }

  private static String names(List<NameRef> named) {
    return named.stream().map(NameRef::text).collect(Collectors.joining(", "));
  }

  private static String conclusion(Step.Finding finding) {
    if (finding.evacuate()) {
      return "everybody out";
    }
    if (finding.healthy()) {
      return "no fault here";
    }
    return finding.faults().isEmpty() ? finding.refer().map(to -> "call " + to.text()).orElse("")
        : names(finding.faults());
  }

  private static String actions(Step.Task task) {
    return task.actions().stream().map(Notes::action).collect(Collectors.joining(", "));
  }

  private static String action(Action action) {
    return action.kind().words() + " " + action.thing().text();
  }
}
