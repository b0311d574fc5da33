package rungbook.pack.drawing;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rungbook.system.Terminal;

/**
 * The two leads from what they touch to the meter. Which lead is which is said in letters; the red one is plain,
 * the black one has a broken line along its middle, so that it holds without color too.
 */
final class LeadDrawing {

  private static final int MARGIN = 6;
  private static final int LANE = 10;
  private static final int NARROWEST = 124;
  private static final int GAP = 28;
  private static final int BEND = 40;
  private static final int TAG = 28;
  private static final int BLACK = 1;
  private static final List<String> NAMES = List.of("RED", "BLACK");

  private final List<Titled> subjects;
  private final Svg svg = new Svg();
  private final Map<Terminal, Route> routes = new HashMap<>();
  private final int side;
  private final int width;
  private int y = 2;

  /**
   * A subject to be drawn.
   *
   * @param voltage such as {@code 24 V}; empty if unknown
   */
  record Titled(String title, String voltage, boolean isLine, Piece body) {}

  /** @param x where the lead leaves what is drawn above the meter */
  private record Route(String path, int x) {}

  private LeadDrawing(List<Titled> subjects) {
    this.subjects = subjects;
    this.side = subjects.size() > 1 ? LANE + 2 * MARGIN : MARGIN;
    int bodies = subjects.stream().mapToInt(subject -> subject.body().width()).max().orElse(0);
    int words = subjects.stream().mapToInt(subject -> Words.widest(Words.lines(subject.title(), NARROWEST))).max()
        .orElse(0);
    this.width = Math.max(NARROWEST, Math.max(bodies, words)) + side + MARGIN;
  }

  /**
   * @param leads red first
   * @param meter what the meter is set to
   * @param words what the drawing shows, for people who cannot see it
   */
  static String of(List<Titled> subjects, List<Terminal> leads, String meter, String words) {
    LeadDrawing drawing = new LeadDrawing(subjects);
    for (int subject = 0; subject < subjects.size(); subject++) {
      drawing.subject(subject, leads);
    }
    drawing.leads(leads);
    Piece piece = MeterPiece.of(meter, drawing.width);
    drawing.svg.piece(piece, 0, drawing.y);
    return drawing.svg.page(drawing.width, drawing.y + piece.height(), words);
  }

  private void subject(int index, List<Terminal> leads) {
    Titled subject = subjects.get(index);
    int inner = width - side - MARGIN;
    Piece heading = HeadingPiece.of(subject.title(), subject.voltage(), subject.isLine(), inner);
    svg.piece(heading, side, y);
    int left = side + (inner - subject.body().width()) / 2;
    svg.piece(subject.body(), left, y + heading.height());
    Map<Terminal, Piece.Anchor> anchors = subject.body().anchorsAt(left, y + heading.height());
    y += heading.height() + subject.body().height();
    boolean isLast = index == subjects.size() - 1;
    leads.forEach(lead -> Optional.ofNullable(anchors.get(lead))
        .ifPresent(anchor -> routes.putIfAbsent(lead, route(anchor, isLast))));
    y += isLast ? 0 : GAP;
  }

  /** Down past the piece, and past one below it at the left edge. */
  private Route route(Piece.Anchor anchor, boolean isLast) {
    String down = "M" + anchor.x() + " " + anchor.y() + (anchor.exitX() == anchor.x() ? "" : "H" + anchor.exitX());
    return isLast ? new Route(down, anchor.exitX()) : new Route(down + "V" + (y + 10) + "H" + LANE, LANE);
  }

  /** The leads never cross: the left one goes to the left of the meter. */
  private void leads(List<Terminal> leads) {
    List<Route> found = leads.stream().flatMap(lead -> Stream.ofNullable(routes.get(lead))).toList();
    boolean redLeft = found.get(0).x() <= found.get(1).x();
    int left = tagWidth(redLeft ? 0 : 1);
    int right = tagWidth(redLeft ? 1 : 0);
    int start = (width - left - right) / 3;
    lead(redLeft ? 0 : 1, found, start + left / 2);
    lead(redLeft ? 1 : 0, found, width - start - right / 2);
    y += BEND + TAG + 8;
  }

  private static int tagWidth(int lead) {
    return Words.width(NAMES.get(lead)) + 6;
  }

  private void lead(int lead, List<Route> found, int jack) {
    Route route = found.get(lead);
    int tag = y + BEND;
    int over = jack - route.x();
    String bend = "c0 " + BEND / 2 + " " + over + " " + BEND / 2 + " " + over + " " + BEND;
    String path = route.path() + "V" + y + bend + "v" + (TAG + 8);
    String color = NAMES.get(lead).toLowerCase(Locale.ROOT);
    svg.path("casing", path).path(color, path);
    if (lead == BLACK) {
      svg.path("tracer", path);
    }
    svg.rect("tag " + color, jack - tagWidth(lead) / 2, tag, tagWidth(lead), TAG);
    svg.text("letters", jack, tag + 20, NAMES.get(lead));
  }
}
