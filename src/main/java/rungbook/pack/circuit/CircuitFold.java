package rungbook.pack.circuit;

import java.util.List;
import rungbook.system.Terminal;
import rungbook.text.Markup;

/** What a check's page says of the circuit, folded: the rungs that its leads touch, and what can still be the cause. */
public record CircuitFold(CircuitPictures pictures, StillPossible possible) {

  private static final int SHOWN = 6;

  /** As HTML; empty where the circuit knows nothing of the leads. */
  public String of(int step, List<Terminal> leads) {
    String drawn = pictures.of(leads);
    if (drawn.isEmpty()) {
      return "";
    }
    var html = new StringBuilder("<details class=\"circuit\"><summary>Where in the circuit");
    List<StillPossible.Suspect> suspects = possible.at(step);
    if (possible.isKnown(step)) {
      html.append(" <b data-f=\"").append(possible.codeAt(step)).append("\">Still possible: ").append(suspects.size())
          .append("</b>");
    }
    html.append("</summary>\n").append(drawn);
    if (possible.isKnown(step)) {
      list(html, suspects);
    }
    return html.append("<p><a href=\"#").append(pictures.anchor()).append("\">The whole circuit</a></p></details>\n")
        .toString();
  }

  private static void list(StringBuilder html, List<StillPossible.Suspect> suspects) {
    html.append("<ol class=\"suspects\">");
    suspects.stream().limit(SHOWN).forEach(one -> html.append("<li>").append(Markup.escape(one.name())).append(" <i>")
        .append(one.percent() < 1 ? "under 1" : one.percent()).append(" %</i></li>"));
    if (suspects.size() > SHOWN) {
      html.append("<li>").append(suspects.size() - SHOWN).append(" more, each less likely</li>");
    }
    html.append("</ol>\n");
  }
}
