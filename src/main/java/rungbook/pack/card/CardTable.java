package rungbook.pack.card;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rungbook.pack.page.Html;
import rungbook.proof.demand.Activity;
import rungbook.proof.demand.ExpectedReadings;
import rungbook.proof.demand.Shown;
import rungbook.system.Names;
import rungbook.system.Terminal;
import rungbook.system.Vocabulary;

/** The tables of a pocket card, with a column or a row for each call. */
final class CardTable {

  /** Below it a display's tenth says something. */
  private static final double WHOLE_VOLTS = 10;

  /** Of the installations: what fewer show is no part of the usual picture. */
  private static final double MOST = 0.5;

  private final ExpectedReadings expected;
  private final CardInput input;
  private final Vocabulary words;

  CardTable(CardInput input) {
    this.input = input;
    this.expected = input.expected();
    this.words = input.system().vocabulary();
  }

  /** The readings at a place. */
  void readings(Html html, String place) {
    html.open("table").element("caption", Optional.ofNullable(words.locations().get(place)).map(at -> at.name())
        .orElse(place)).open("thead").open("tr").element("th", "Leads", "scope", "col");
    expected.calls().forEach(call -> html.element("th", call.words(), "scope", "col"));
    html.close("tr").close("thead").open("tbody");
    expected.rows().stream().filter(row -> row.red().place().equals(place)).forEach(row -> row(html, row));
    html.close("tbody").close("table").line();
  }

  private void row(Html html, ExpectedReadings.Row row) {
    html.open("tr").element("th", name(row.red(), row) + " to " + name(row.black(), row), "scope", "row");
    row.shown().forEach(shown -> html.element("td", cell(shown)));
    html.close("tr").line();
  }

  private String name(Terminal lead, ExpectedReadings.Row row) {
    String name = words.pointName(lead.point());
    boolean isThere = lead.isGround() || lead.place().equals(row.red().place());
    return isThere ? name : name + " at " + lead.place();
  }

  /** The spread over installations and tolerances, without the meter's own error. */
  private static String cell(Shown shown) {
    if (!(shown instanceof Shown.Amounts amounts)) {
      return "–";
    }
    String low = volts(amounts.low());
    String high = volts(amounts.high());
    return amounts.lowImpedance().isPresent() ? "stray" : low.equals(high) ? low : low + "–" + high;
  }

  private static String volts(double reading) {
    String tenths = String.format(Locale.ROOT, reading < WHOLE_VOLTS ? "%.1f" : "%.0f", reading);
    return tenths.endsWith(".0") ? tenths.substring(0, tenths.length() - 2) : tenths;
  }

  /** What each call starts: what is seen and heard then, and not without a call. */
  void runs(Html html) {
    html.open("section", "class", "runs").element("h2", "What runs");
    Set<String> always = seen(expected.calls().get(0).activity());
    expected.calls().stream().skip(1).forEach(call -> {
      List<String> more = seen(call.activity()).stream().filter(sight -> !always.contains(sight)).toList();
      html.element("h3", call.words()).element("p", more.isEmpty() ? "Nothing more." : String.join(", ", more)).line();
    });
    html.close("section").line();
  }

  /** In the order of the system's text. */
  private Set<String> seen(Activity activity) {
    return input.system().sights().stream().map(sight -> sight.name())
        .filter(name -> activity.seen().getOrDefault(Names.key(name), 0.0) > MOST)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }
}
