package rungbook.web.views;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.coverage.Cell;
import rungbook.proof.coverage.SystemCoverage;
import rungbook.proof.coverage.TreeFindings;
import rungbook.text.English;
import rungbook.text.UrlPath;

/**
 * What the trees of a library find on one system, as a page shows it.
 *
 * @param uncovered the faults that no tree finds, the likeliest first; {@code uncoveredShare} is empty without any
 */
public record CoverageView(String system, String size, List<Column> complaints, List<Row> faults,
    List<Uncovered> uncovered, String uncoveredShare) {

  /** @param words what the customer sees, in the system's words */
  record Column(int number, String title, String href, String words) {}

  record Row(String fault, String likelihood, List<Field> fields) {}

  /**
   * A fault on a complaint.
   *
   * @param kind {@code found}, {@code partly}, {@code missed}, or empty for a fault that does not give the complaint
   * @param text checks and minutes, or what happens instead
   * @param tree the number of the complaint whose tree finds it, if it is another one
   */
  record Field(String kind, String text, String tree) {}

  /** @param given the complaints that it gives, in words */
  record Uncovered(String fault, String likelihood, String given) {}

  public static CoverageView of(SystemCoverage coverage) {
    List<TreeFindings> trees = coverage.trees();
    String title = trees.get(0).systemTitle();
    return new CoverageView(title,
        English.counted(trees.size(), "complaint") + " and " + English.counted(coverage.faults().size(), "fault"),
        IntStream.range(0, trees.size()).mapToObj(i -> column(i + 1, trees.get(i))).toList(),
        coverage.faults().stream().map(row -> row(row, trees)).toList(),
        coverage.uncovered().stream().map(CoverageView::uncovered).toList(),
        coverage.uncovered().isEmpty() ? "" : percent(coverage.uncoveredShare()));
  }

  private static Column column(int number, TreeFindings tree) {
    String words = tree.words()
        .map(said -> said + ": " + percent(tree.likelihood()) + " of the likelihood")
        .orElse("not said in the system's words, so every fault counts");
    return new Column(number, tree.title(), "/tree/trees/" + UrlPath.of(tree.tree()) + ".md", words);
  }

  private static Row row(SystemCoverage.Row row, List<TreeFindings> trees) {
    return new Row(row.fault(), percent(row.likelihood()),
        row.cells().stream().map(cell -> field(cell, trees)).toList());
  }

  private static Field field(Optional<Cell> found, List<TreeFindings> trees) {
    if (found.isEmpty()) {
      return new Field("", "", "");
    }
    Cell cell = found.get();
    return switch (cell.result()) {
      case FOUND -> new Field("found", work(cell), tree(cell, trees));
      case PARTLY_FOUND -> new Field("partly", work(cell) + ", " + percent(cell.found()), tree(cell, trees));
      case IN_A_CIRCLE -> new Field("missed", "circle", "");
      case NEVER_FOUND -> new Field("missed", "never", "");
      case NOT_FOLLOWED -> new Field("missed", "not followed", "");
    };
  }

  private static String work(Cell cell) {
    return Math.round(cell.journey().checks()) + "/" + Math.round(cell.journey().minutes());
  }

  private static String tree(Cell cell, List<TreeFindings> trees) {
    return cell.place().filter(place -> !place.through().isEmpty())
        .flatMap(place -> IntStream.range(0, trees.size())
            .filter(i -> trees.get(i).tree().equals(place.tree())).boxed().findFirst())
        .map(i -> Integer.toString(i + 1)).orElse("");
  }

  private static Uncovered uncovered(SystemCoverage.Row row) {
    String given = SystemCoverage.given(row).stream().map(i -> Integer.toString(i + 1))
        .collect(Collectors.joining(", "));
    return new Uncovered(row.fault(), percent(row.likelihood()),
        given.isEmpty() ? "gives no complaint" : "gives " + given);
  }

  // a number and its sign stay on one line
  private static String percent(double share) {
    return ReportNumbers.percent(share).replace(" %", "\u00a0%");
  }
}
