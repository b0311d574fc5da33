package rungbook.proof.coverage;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rungbook.proof.accounting.Share;
import rungbook.proof.report.Complaint;

/**
 * What the trees of a library find on one system.
 *
 * @param system its id
 * @param trees the trees for it, in the order of the library
 * @param faults in the order of the system
 */
public record SystemCoverage(String system, List<TreeFindings> trees, List<Row> faults) {

  public SystemCoverage {
    trees = List.copyOf(trees);
    faults = List.copyOf(faults);
  }

  /**
   * A fault.
   *
   * @param likelihood the share of the system's likelihood
   * @param cells one for each tree; empty where the fault does not give the complaint
   */
  public record Row(String fault, double likelihood, List<Optional<Cell>> cells) {

    public Row {
      cells = List.copyOf(cells);
    }

    /** Whether some tree finds it, or hands it to one that does, in some installation. */
    public boolean isCovered() {
      return cells.stream().flatMap(Optional::stream).anyMatch(cell -> Share.isReported(cell.found()));
    }
  }

  /** @param trees for one system, at least one */
  static SystemCoverage of(String system, List<TreeFindings> trees) {
    List<Complaint.Shown> faults = trees.get(0).faults();
    double all = faults.stream().mapToDouble(Complaint.Shown::likelihood).sum();
    List<Row> rows = IntStream.range(0, faults.size()).mapToObj(i -> new Row(faults.get(i).fault(),
        all == 0 ? 0 : faults.get(i).likelihood() / all,
        trees.stream().map(tree -> cell(tree, faults.get(i).fault())).toList())).toList();
    return new SystemCoverage(system, trees, rows);
  }

  private static Optional<Cell> cell(TreeFindings tree, String fault) {
    double gives = tree.faults().stream().filter(one -> one.fault().equals(fault))
        .mapToDouble(Complaint.Shown::share).findFirst().orElse(0);
    return tree.journeys().stream().skip(1).filter(journey -> journey.fault().equals(fault)).findFirst()
        .map(journey -> new Cell(gives, journey));
  }

  /** The faults that no tree finds, the likeliest first. */
  public List<Row> uncovered() {
    return faults.stream().filter(row -> !row.isCovered())
        .sorted(Comparator.comparingDouble((Row row) -> -row.likelihood())).toList();
  }

  /** The share of the system's likelihood that no tree finds. */
  public double uncoveredShare() {
    return uncovered().stream().mapToDouble(Row::likelihood).sum();
  }

  /** The trees whose complaint a fault gives, as indexes of {@link #trees}. */
  public static List<Integer> given(Row row) {
    return IntStream.range(0, row.cells().size()).filter(i -> row.cells().get(i).isPresent()).boxed().toList();
  }
}
