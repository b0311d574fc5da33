package rungbook.report;

import java.util.ArrayList;
import java.util.List;
import rungbook.source.Wording;

/** Formats a rule's help page for a terminal: emphasized headings, indented examples, wrapped prose. */
public final class RulePage {

  private final Style style;
  private final List<String> lines = new ArrayList<>();
  private final StringBuilder paragraph = new StringBuilder();
  private String fence = "";

  private RulePage(Style style) {
    this.style = style;
  }

  public static String of(Wording wording, Style style) {
    RulePage page = new RulePage(style);
    page.lines.add(
        style.severity(wording.severity(), wording.severity().word()) + " " + style.strong(wording.code().name()) + ": "
            + Wrap.text(wording.says(), wording.severity().word().length() + wording.code().name().length() + 3, 2));
    page.lines.add("  " + style.strong("hint: ") + Wrap.text(wording.hint(), 8, 8));
    page.lines.add("");
    wording.page().strip().lines().forEach(page::take);
    page.endParagraph();
    return String.join("\n", page.lines) + "\n";
  }

  private void take(String line) {
    if (!fence.isEmpty()) {
      takeExample(line);
    } else if (line.startsWith("~~~") || line.startsWith("```")) {
      endParagraph();
      fence = line.substring(0, line.length() - line.replaceFirst("^(~+|`+)", "").length());
    } else if (line.isBlank() || line.startsWith("#") || line.startsWith("- ")) {
      endParagraph();
      takeBreak(line);
    } else {
      paragraph.append(line.strip()).append(' ');
    }
  }

  private void takeExample(String line) {
    if (line.strip().equals(fence)) {
      fence = "";
    } else {
      lines.add(line.isEmpty() ? "" : "    " + line);
    }
  }

  private void takeBreak(String line) {
    if (line.startsWith("#")) {
      lines.add(style.strong(line.replaceFirst("^#+ *", "")));
    } else if (line.isBlank()) {
      lines.add("");
    } else {
      paragraph.append(line).append(' ');
    }
  }

  private void endParagraph() {
    if (!paragraph.isEmpty()) {
      lines.add(Wrap.text(paragraph.toString(), 0, paragraph.charAt(0) == '-' ? 2 : 0));
      paragraph.setLength(0);
    }
  }
}
