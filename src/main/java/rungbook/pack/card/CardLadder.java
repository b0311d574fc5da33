package rungbook.pack.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungbook.ladder.Ladder;
import rungbook.ladder.LadderDrawing;
import rungbook.ladder.Rung;
import rungbook.ladder.VoltageBlock;

/** A ladder in pieces that each fit a column of the card: a drawing cannot go on in the next column, a rung can. */
final class CardLadder {

  /** Half of a Letter sheet in landscape, less margins, title and foot, in pixels. */
  private static final int WIDTH = 470;
  private static final double HEIGHT = 660;

  private static final Pattern DRAWN = Pattern.compile(" height=\"([0-9.]+)\"");

  private CardLadder() {}

  static List<String> drawings(Ladder ladder) {
    var drawings = new ArrayList<String>();
    ladder.blocks().forEach(block -> pieces(ladder, block, drawings));
    return drawings;
  }

  private static void pieces(Ladder ladder, VoltageBlock block, List<String> drawings) {
    List<Rung> rungs = new ArrayList<>();
    String drawn = "";
    for (Rung rung : block.rungs()) {
      rungs.add(rung);
      String longer = drawing(ladder, block, rungs);
      if (height(longer) > HEIGHT && rungs.size() > 1) {
        drawings.add(drawn);
        rungs = new ArrayList<>(List.of(rung));
        longer = drawing(ladder, block, rungs);
      }
      drawn = longer;
    }
    drawings.add(drawn);
  }

  private static String drawing(Ladder ladder, VoltageBlock block, List<Rung> rungs) {
    var part = new VoltageBlock(block.title(), block.isLine(), block.left(), block.right(), rungs);
    return LadderDrawing.of(new Ladder(ladder.title(), List.of(part), List.of()), WIDTH, Set.of());
  }

  private static double height(String svg) {
    Matcher height = DRAWN.matcher(svg);
    return height.find() ? Double.parseDouble(height.group(1)) : 0;
  }
}
