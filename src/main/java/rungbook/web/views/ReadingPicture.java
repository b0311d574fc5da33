package rungbook.web.views;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import rungbook.proof.report.Bounds;
import rungbook.proof.report.Proof;
import rungbook.text.Markup;
import rungbook.tree.Tree;

/**
 * What is read at a check with a meter, on one scale: good units as a hump, then a row for each answer with the name of
 * where it leads, for each limit with the range in which it works, and for each of the likeliest faults. A line goes
 * down through all rows at each limit. Every row has its words above its bar, so that they fit on a phone.
 */
final class ReadingPicture {
  private static final int WIDTH = 300;
  private static final int MARGIN = 8;
  private static final int LINE = 17;
  private static final int BAR = 9;
  private static final int GAP = 8;
  private static final int HUMP = 44;
  private static final int MOST_CHARACTERS = 36;
  private static final int MOST_FAULTS = 8;
  private static final double NARROWEST = 4;
  private static final Pattern RANGE = Pattern.compile("([\\d.]+) to ([\\d.]+|OL)");
  private final Proof.Check check;
  private final PictureWords words;
  private final ReadingAxis axis;
  private final StringBuilder hump = new StringBuilder();
  private final StringBuilder rows = new StringBuilder();
  private int y;
  private int limitsFrom;

  private ReadingPicture(Proof.Check check, Tree tree) {
    this.check = check;
    words = new PictureWords(check, tree);
    axis = new ReadingAxis(check.histogram().high(), MARGIN, WIDTH - 2.0 * MARGIN);
  }

  static String svg(Proof.Check check, Tree tree) {
    return new ReadingPicture(check, tree).svg();
  }

  private String svg() {
    goodUnits();
    heading("Your answers");
    answers();
    heading("Where the limits work");
    check.limits().forEach(this::limit);
    int limitsTo = y;
    faults();
    return text("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"readings\" role=\"img\" viewBox=\"0 0 %d %d\">"
        + "<title>Readings at %s</title><desc>%s</desc>", WIDTH, y, Markup.escape(check.title()),
        Markup.escape(String.join(" ", words.sentences()))) + hump + limitLines(limitsTo) + rows + "</svg>";
  }

  private void goodUnits() {
    line(words.goodUnits(), "strong");
    limitsFrom = y + GAP / 2;
    y += GAP + HUMP;
    hump(check.histogram().healthy());
    add("<path class=\"axis\" d=\"M%d %dH%d\"/>", MARGIN, y, WIDTH - MARGIN);
    ticks();
    y += LINE + GAP;
  }

  private void hump(double[] shares) {
    double most = Arrays.stream(shares).max().orElse(0);
    var path = new StringBuilder("M" + MARGIN + " " + y);
    for (int bin = 0; bin < shares.length; bin++) {
      double height = most == 0 ? 0 : HUMP * shares[bin] / most;
      path.append(text("V%.1fH%.1f", y - height, axis.x(axis.high() * (bin + 1) / shares.length)));
    }
    hump.append(text("<path class=\"healthy\" d=\"%sV%dz\"/>", path, y));
  }

  private void ticks() {
    List<BigDecimal> ticks = axis.ticks();
    for (int i = 0; i < ticks.size(); i++) {
      double x = axis.x(ticks.get(i).doubleValue());
      String label = ReadingAxis.label(ticks.get(i)) + (i == ticks.size() - 1 ? " " + words.unit() : "");
      add("<path class=\"axis\" d=\"M%.1f %dv4\"/>", x, y);
      String anchor = i == 0 ? "start" : x > WIDTH - 3 * MARGIN ? "end" : "middle";
      add("<text x=\"%.1f\" y=\"%d\" text-anchor=\"%s\">%s</text>", i == 0 ? MARGIN : x, y + LINE + 1, anchor,
          Markup.escape(label));
    }
  }

  private void answers() {
    List<Proof.Band> bands = check.bands();
    for (int way : bands.stream().mapToInt(Proof.Band::way).filter(way -> way >= 0).distinct().toArray()) {
      line(words.answer(way), "");
      for (int i = 0; i < bands.size(); i++) {
        if (bands.get(i).way() == way) {
          bar("band", bands.get(i).from(), i + 1 < bands.size() ? bands.get(i + 1).from() : axis.high());
        }
      }
      y += BAR + GAP;
    }
  }

  private void limit(Proof.Limit limit) {
    line(words.limit(limit), limit.worst().isEmpty() ? "" : "strong");
    if (Bounds.leaveRoom(limit)) {
      bar("room", limit.above().map(bound -> bound.shown().doubleValue()).orElse(0.0),
          limit.upTo().map(bound -> bound.shown().doubleValue()).orElse(axis.high()));
    }
    double x = axis.x(limit.at().doubleValue());
    add("<path class=\"mark\" d=\"M%.1f %dv%d\"/>", x, y - 1, BAR + 2);
    y += BAR + GAP;
  }

  private void faults() {
    List<Proof.Reads> faults = words.faults();
    if (faults.isEmpty()) {
      return;
    }
    heading("Units with a fault" + (faults.size() > MOST_FAULTS ? " (the " + MOST_FAULTS + " likeliest)" : ""));
    for (Proof.Reads reads : faults.subList(0, Math.min(MOST_FAULTS, faults.size()))) {
      line(words.fault(reads), "");
      bar("faulty", reads.lowest(), reads.highest());
      y += BAR + GAP;
    }
  }

  private String limitLines(int to) {
    var lines = new StringBuilder();
    for (Proof.Limit limit : check.limits()) {
      double x = axis.x(limit.at().doubleValue());
      lines.append(text("<path class=\"limit%s\" d=\"M%.1f %dV%d\"/>", limit.worst().isEmpty() ? "" : " wrong", x,
          limitsFrom, to));
    }
    return lines.toString();
  }

  private void heading(String name) {
    y += GAP / 2;
    line(name, "strong");
  }

  /** In as many lines as it needs. */
  private void line(String sentence, String style) {
    for (String part : wrapped(sentence)) {
      y += LINE;
      add("<text class=\"%s\" x=\"%d\" y=\"%d\">%s</text>", style, MARGIN, y - 5, Markup.escape(part));
    }
  }

  /** A range and its unit stay on one line. */
  private List<String> wrapped(String sentence) {
    var lines = new ArrayList<String>();
    var line = new StringBuilder();
    String kept = RANGE.matcher(sentence).replaceAll("$1\u00a0to\u00a0$2").replace(" " + words.unit(),
        "\u00a0" + words.unit());
    for (String word : kept.split(" ", -1)) {
      if (!line.isEmpty() && line.length() + 1 + word.length() > MOST_CHARACTERS) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  /** Never too narrow to see. */
  private void bar(String style, double from, double to) {
    double left = axis.x(from);
    double width = Math.max(NARROWEST, axis.x(to) - left);
    add("<rect class=\"%s\" x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"%d\"/>", style,
        Math.min(left, WIDTH - MARGIN - width), y, width, BAR);
  }

  private void add(String format, Object... values) {
    rows.append(text(format, values));
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
