package rungbook.pack.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rungbook.system.Names;
import rungbook.system.Vocabulary;
import rungbook.tree.NameRef;
import rungbook.tree.Step;

/**
 * The terminals that a drawing shows, in the system's order: those with a lead, and beside lettered ones the other
 * lettered terminals of that place, as many as fit.
 */
final class TerminalStrip {

  /** Of the whole drawing, in its own pixels; a phone of 320 px shows it at nearly full size. */
  static final int WIDTH = 280;

  /** Longer names are a part's own terminals, not letters on a strip. */
  private static final int LONGEST_LETTERS = 3;

  private static final int LETTER_WIDTH = 12;

  private final List<Cell> cells;

  /** @param lead 0 for red, 1 for black, -1 for none */
  record Cell(String name, int lead) {

    /** A name in lines of a word or two, as printed above its screw. */
    List<String> lines() {
      var lines = new ArrayList<String>();
      for (String word : name.split(" ", -1)) {
        int last = lines.size() - 1;
        if (last >= 0 && lines.get(last).length() + word.length() < 7) {
          lines.set(last, lines.get(last) + " " + word);
        } else {
          lines.add(word);
        }
      }
      return lines;
    }

    int width() {
      int widest = lines().stream().mapToInt(Cell::textWidth).max().orElse(0);
      return Math.min(WIDTH / 2, Math.max(40, widest + 8));
    }

    /** About, for letters of 18 px. */
    static int textWidth(String line) {
      return line.length() * LETTER_WIDTH;
    }

    boolean isLettered() {
      return name.length() <= LONGEST_LETTERS;
    }
  }

  private TerminalStrip(List<Cell> cells) {
    this.cells = List.copyOf(cells);
  }

  /** @param leads one or two, red first */
  static TerminalStrip of(List<NameRef> leads, Step step, Optional<Vocabulary> system) {
    List<String> known = system.map(words -> pointsAt(words, step.at())).orElse(List.of());
    var chosen = new ArrayList<Cell>();
    for (int lead = 0; lead < leads.size(); lead++) {
      chosen.add(new Cell(written(known, leads.get(lead)), lead));
    }
    if (chosen.size() > 1 && chosen.stream().anyMatch(Cell::isLettered)) {
      addNeighbors(chosen, known);
    }
    chosen.sort(Comparator.comparingInt(cell -> position(known, cell)));
    return new TerminalStrip(chosen);
  }

  /** As the system writes it, {@code R} for {@code r}. */
  private static String written(List<String> known, NameRef lead) {
    return known.stream().filter(name -> Names.key(name).equals(lead.key())).findFirst().orElse(lead.text());
  }

  private static void addNeighbors(List<Cell> chosen, List<String> known) {
    int room = WIDTH - chosen.stream().mapToInt(Cell::width).sum();
    for (String name : known) {
      Cell cell = new Cell(name, -1);
      if (cell.isLettered() && cell.width() <= room && chosen.stream().noneMatch(other -> other.name().equals(name))) {
        chosen.add(cell);
        room -= cell.width();
      }
    }
  }

  private static List<String> pointsAt(Vocabulary system, Optional<NameRef> at) {
    return system.points().values().stream().filter(point -> at.isEmpty() || point.locations().contains(at.get().key()))
        .map(Vocabulary.Point::name).toList();
  }

  private static int position(List<String> known, Cell cell) {
    int position = known.indexOf(cell.name());
    return position < 0 ? known.size() + cell.lead() : position;
  }

  List<Cell> cells() {
    return cells;
  }

  int labelLines() {
    return cells.stream().mapToInt(cell -> cell.lines().size()).max().orElse(1);
  }

  int width() {
    return cells.stream().mapToInt(Cell::width).sum();
  }
}
