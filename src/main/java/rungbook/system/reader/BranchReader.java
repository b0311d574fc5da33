package rungbook.system.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungbook.markdown.Entry;
import rungbook.system.PartBranch;

/** Reads the branches of one part: its pairs of points, or the conductors of a cable. */
final class BranchReader {

  private static final String TO = " to ";

  private final PartLine line;
  private final PartTokens tokens;
  private final Terminals terminals;

  /**
   * The branches of a part.
   *
   * @param found those whose two terminals are known
   * @param written how many pairs of points the line has
   */
  record Read(List<PartBranch> found, int written) {}

  BranchReader(PartLine line, PartTokens tokens, Terminals terminals) {
    this.line = line;
    this.tokens = tokens;
    this.terminals = terminals;
  }

  Read read() {
    return line.kind().equals("cable") ? conductors() : pairs();
  }

  private Read pairs() {
    var items = tokens.words().stream().filter(BranchReader::isPair).toList();
    tokens.words().removeIf(BranchReader::isPair);
    var found = new ArrayList<PartBranch>();
    items.forEach(item -> terminals.join(branchName(items.size(), item), item).ifPresent(found::add));
    return new Read(found, items.size());
  }

  private static boolean isPair(Entry.Item item) {
    return item.text().contains(TO) && !item.text().contains(" when ");
  }

  /** A part with several branches names each by its first terminal. */
  private String branchName(int count, Entry.Item item) {
    if (count == 1) {
      return line.name();
    }
    String first = item.text().substring(0, item.text().indexOf(TO));
    int at = first.lastIndexOf(" at ");
    return line.name() + " " + (at < 0 ? first : first.substring(0, at)).strip();
  }

  private Read conductors() {
    var wanted = tokens.takeAfter("conductor ");
    boolean hasEnds = tokens.words().stream().anyMatch(item -> item.text().contains(TO));
    if (!hasEnds || wanted.isEmpty()) {
      line.lacks(!hasEnds ? "the two places it runs between, such as `thermostat to furnace`"
          : "its conductors, such as `conductor Y`");
      return new Read(List.of(), 0);
    }
    String[] places = tokens.takeFirst(TO).orElseThrow().text().split(TO, 2);
    return new Read(wanted.stream().flatMap(item -> conductor(item, places).stream()).toList(), wanted.size());
  }

  private Optional<PartBranch> conductor(Entry.Item item, String[] places) {
    String[] points = item.text().split(TO, 2);
    String far = points.length > 1 ? points[1] : points[0];
    var written = new Entry.Item(points[0] + " at " + places[0] + TO + far + " at " + places[1], item.span());
    return terminals.join(points[0] + " " + line.name(), written);
  }
}
