package rungbook.pack.page;

import java.util.stream.Collectors;
import rungbook.tree.NameRef;
import rungbook.tree.Step;

/** What is wrong, or how the work ends, in a box. */
final class Conclusion {

  private Conclusion() {}

  static void of(Html html, Step.Finding finding) {
    html.open("div", "class", "concluded");
    if (finding.evacuate()) {
      html.open("p", "class", "evacuate danger").text("Get everybody out of the building now.").close("p");
    }
    line(html, "Healthy", finding.healthy() ? "no fault in this system" : "");
    line(html, finding.faults().size() > 1 ? "Fault, one of" : "Fault",
        finding.faults().stream().map(NameRef::text).collect(Collectors.joining("; ")));
    line(html, "Stop here and call", finding.refer().map(NameRef::text).orElse(""));
    guarded(html, finding);
    html.close("div").line();
  }

  static void of(Html html, Step.End end) {
    html.open("div", "class", "concluded");
    line(html, "Result", end.result().words());
    line(html, end.result() == Step.Result.REFERRED ? "Call" : "Tell", end.refer().map(NameRef::text).orElse(""));
    guarded(html, end);
    html.close("div").line();
  }

  private static void guarded(Html html, Step step) {
    line(html, "Left open; somebody stays and guards it",
        step.guarded().stream().map(NameRef::text).collect(Collectors.joining("; ")));
  }

  private static void line(Html html, String what, String words) {
    if (!words.isEmpty()) {
      html.open("p").text(what + ": ").element("b", words).close("p");
    }
  }
}
