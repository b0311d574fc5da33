package rungbook.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.coverage.Cell;
import rungbook.proof.coverage.SystemCoverage;
import rungbook.proof.coverage.TreeFindings;
import rungbook.text.English;

/** What the trees of a library find together, as text: a table of faults and complaints for each system. */
public final class CoverageText {

  private static final int NAME = 34;
  private static final int NUMBER = 11;
  private static final int CELL = 9;

  /** What fits beside the names. */
  private static final int MOST_COLUMNS = 5;

  private static final String LEGEND = "5/41 found in 5 checks and 41 minutes, walking included; >2 by the tree of "
      + "complaint 2; ~ not in every installation; circle: handed in a circle; never: found nowhere; ?: handed to a "
      + "tree that is not followed; blank: does not give the complaint";

  private final SystemCoverage coverage;
  private final Style style;
  private final StringBuilder out = new StringBuilder();

  private CoverageText(SystemCoverage coverage, Style style) {
    this.coverage = coverage;
    this.style = style;
  }

  public static String of(List<SystemCoverage> library, Style style) {
    return library.stream().map(system -> new CoverageText(system, style).text()).collect(Collectors.joining());
  }

  private String text() {
    List<TreeFindings> trees = coverage.trees();
    out.append(style.strong("The whole library on " + Columns.printable(coverage.system()))).append("\n  ")
        .append(English.counted(trees.size(), "complaint")).append(" and ")
        .append(English.counted(coverage.faults().size(), "fault")).append("\n\n");
    for (int i = 0; i < trees.size(); i++) {
      complaint(i + 1, trees.get(i));
    }
    for (int from = 0; from < trees.size(); from += MOST_COLUMNS) {
      table(from, Math.min(from + MOST_COLUMNS, trees.size()));
    }
    wrapped("  ", LEGEND);
    wrapped("  not covered  ", uncovered());
    return out.append('\n').toString();
  }

  private void complaint(int number, TreeFindings tree) {
    String words = tree.words()
        .map(said -> said + " (" + ReportNumbers.percent(tree.likelihood()) + " of the likelihood)")
        .orElse("not said in the system's words, so every fault counts");
    wrapped("  " + Digits.right(number, 2) + "  ", tree.title() + ": " + words);
  }

  private void table(int from, int to) {
    var head = new StringBuilder();
    IntStream.range(from, to).forEach(i -> head.append(right(Integer.toString(i + 1), CELL)));
    out.append('\n').append(style.strong(left("  fault", NAME) + right("likelihood", NUMBER) + head)).append('\n');
    for (SystemCoverage.Row row : coverage.faults()) {
      var cells = new StringBuilder();
      row.cells().subList(from, to).forEach(cell -> cells.append(right(cell(cell), CELL)));
      if (!cells.toString().isBlank()) {
        out.append(left("  " + Columns.printable(row.fault()), NAME))
            .append(right(ReportNumbers.percent(row.likelihood()), NUMBER)).append(cells.toString().stripTrailing())
            .append('\n');
      }
    }
    out.append('\n');
  }

  private String cell(Optional<Cell> found) {
    if (found.isEmpty()) {
      return "";
    }
    Cell cell = found.get();
    return switch (cell.result()) {
      case FOUND -> work(cell);
      case PARTLY_FOUND -> "~" + work(cell);
      case IN_A_CIRCLE -> "circle";
      case NEVER_FOUND -> "never";
      case NOT_FOLLOWED -> "?";
    };
  }

  private String work(Cell cell) {
    String tree = cell.place().map(place -> place.through().isEmpty() ? "" : number(place.tree())).orElse("");
    return Math.round(cell.journey().checks()) + "/" + Math.round(cell.journey().minutes()) + tree;
  }

  /** The number of a complaint; a tree that was not asked for has none. */
  private String number(String tree) {
    return IntStream.range(0, coverage.trees().size())
        .filter(i -> coverage.trees().get(i).tree().equals(tree)).mapToObj(i -> ">" + (i + 1)).findFirst()
        .orElse(">");
  }

  private String uncovered() {
    return coverage.uncovered().isEmpty() ? "nothing: each fault is found on some complaint"
        : coverage.uncovered().stream().map(this::uncovered).collect(Collectors.joining(", ")) + "; together "
            + ReportNumbers.percent(coverage.uncoveredShare()) + " of the likelihood";
  }

  private String uncovered(SystemCoverage.Row row) {
    String given = SystemCoverage.given(row).stream().map(i -> Integer.toString(i + 1))
        .collect(Collectors.joining(", "));
    return row.fault() + " " + ReportNumbers.percent(row.likelihood())
        + (given.isEmpty() ? " (gives no complaint)" : " (gives " + given + ")");
  }

  private void wrapped(String label, String words) {
    out.append(label).append(Wrap.text(Columns.printable(words), label.length(), label.length())).append('\n');
  }

  private static String left(String text, int width) {
    String cut = text.length() >= width ? text.substring(0, width - 2) + "…" : text;
    return cut + " ".repeat(width - cut.length());
  }

  private static String right(String text, int width) {
    return " ".repeat(Math.max(0, width - text.length())) + text;
  }
}
