package rungbook.pack.card;

import java.nio.charset.StandardCharsets;
import rungbook.ladder.Ladder;
import rungbook.pack.PackFile;
import rungbook.pack.page.FileNames;
import rungbook.pack.page.Frame;
import rungbook.pack.page.Html;
import rungbook.pack.page.PageForm;
import rungbook.pack.page.TitleBlock;
import rungbook.pack.page.TreeText;
import rungbook.pack.style.CardAssets;
import rungbook.proof.demand.ExpectedReadings;

/**
 * A system's pocket card: what a healthy unit reads and does, and its ladder. On paper it is a landscape sheet in four
 * columns, to fold between them.
 */
public final class CardPage {

  private CardPage() {}

  public static PackFile of(CardInput input) {
    String title = input.system().vocabulary().title();
    Html html = new Html();
    Frame.head(html, "Pocket card: " + title, CardAssets.STYLE, CardAssets.SCRIPT, "");
    html.open("body", "data-file", FileNames.ofCard(input.id())).line();
    TitleBlock.head(html, title, "Pocket card: AC volts of a healthy unit with its power on and its panels closed.");
    Frame.bar(html);
    html.open("main", "class", "card");
    html.open("div", "class", "quarters").element("p", TreeText.DEFERRAL, "class", "deferral").line();
    CardTable table = new CardTable(input);
    readings(html, input.expected(), table);
    table.runs(html);
    html.close("div").line();
    html.open("section", "class", "rungs").element("h2", "Ladder");
    CardLadder.drawings(Ladder.of(input.system())).forEach(drawing -> html.raw(drawing).line());
    html.close("section").line();
    TitleBlock.ofIndex(html);
    html.close("main").line();
    Frame.foot(html, CardAssets.SCRIPT);
    PageForm blank = PageForm.of(html.toString().getBytes(StandardCharsets.UTF_8)).orElseThrow();
    return new PackFile(FileNames.ofCard(input.id()), blank.with(blank.computed()));
  }

  private static void readings(Html html, ExpectedReadings expected, CardTable table) {
    html.open("section", "class", "expected").element("h2", "Expected readings");
    if (expected.rows().isEmpty()) {
      html.element("p", "No tree of this system measures AC volts.");
    }
    expected.rows().stream().map(row -> row.red().place()).distinct().forEach(place -> table.readings(html, place));
    html.close("section").line();
  }
}
