package rungbook.web.views;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import rungbook.proof.accounting.ReadingHistogram;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.report.Proof;
import rungbook.text.Markup;

/**
 * A small histogram of the readings at a check: healthy systems above the line, systems with a fault below it, and the
 * limits across both. Heights are square roots of the shares, so that a rare reading still shows beside a common one.
 */
final class HistogramSvg {
  private static final int WIDTH_PX = 300;
  private static final int MARGIN_PX = 8;
  private static final int LINE_PX = 84;
  private static final int TALLEST_PX = 48;
  private static final int HEIGHT_PX = 156;
  private static final int LABEL_PX = 46;
  private static final double TOO_FEW_TO_DRAW = 5e-4;
  private final Proof.Check check;
  private final ReadingHistogram histogram;
  private final String unit;
  private final StringBuilder svg = new StringBuilder();

  HistogramSvg(Proof.Check check, String unit) {
    this.check = check;
    this.histogram = check.histogram();
    this.unit = unit;
  }

  String svg() {
    add("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"histogram\" role=\"img\" viewBox=\"0 0 %d %d\">"
        + "<title>Readings at %s</title><desc>%s</desc>", WIDTH_PX, HEIGHT_PX,
        Markup.escape(check.title()), Markup.escape(inWords()));
    outline(histogram.healthy(), -1, "healthy");
    outline(histogram.arriving(), 1, "faulty");
    add("<path class=\"axis\" d=\"M%d %dH%d\"/>", MARGIN_PX, LINE_PX, WIDTH_PX - MARGIN_PX);
    text(MARGIN_PX, HEIGHT_PX - 5, "start", "0");
    text(WIDTH_PX - MARGIN_PX, HEIGHT_PX - 4, "end", number(histogram.high()) + " " + unit + " and over");
    limits();
    return svg.append("</svg>").toString();
  }

  private void outline(double[] shares, int direction, String kind) {
    var most = Arrays.stream(shares).max().orElse(0);
    var path = new StringBuilder("M" + MARGIN_PX + " " + LINE_PX);
    for (var bin = 0; bin < shares.length; bin++) {
      var height = most == 0 ? 0 : TALLEST_PX * Math.sqrt(shares[bin] / most);
      path.append(String.format(Locale.ROOT, "V%.1fH%.1f", LINE_PX + direction * height,
          x(histogram.high() * (bin + 1) / shares.length)));
    }
    add("<path class=\"%s\" d=\"%sV%dz\"/>", kind, path, LINE_PX);
  }

  private void limits() {
    var free = new double[] {0, 0};
    for (var limit : check.limits()) {
      var x = x(limit.at().doubleValue());
      var row = x - LABEL_PX / 2.0 >= free[0] ? 0 : 1;
      free[row] = x + LABEL_PX / 2.0;
      add("<path class=\"limit%s\" d=\"M%.1f %dV%d\"/>", limit.misrouted().isEmpty() ? "" : " wrong", x, 16 + 15 * row,
          HEIGHT_PX - 20);
      text(x, 12 + 15 * row, "middle",
          (limit.misrouted().isEmpty() ? "" : "! ") + ReportNumbers.number(limit.at()) + " " + unit);
    }
  }

  private double x(double reading) {
    return MARGIN_PX + (WIDTH_PX - 2 * MARGIN_PX) * Math.min(1, reading / histogram.high());
  }

  /** The picture in words. */
  String inWords() {
    var limits = check.limits().stream().map(limit -> ReportNumbers.number(limit.at()) + " " + unit).toList();
    return "Healthy systems read " + stretches(histogram.healthy(), 0) + ". Systems with a fault read "
        + stretches(histogram.arriving(), histogram.overload()) + ". Limits at " + String.join(", ", limits);
  }

  /** Runs of adjacent bins, each with its share. */
  private String stretches(double[] shares, double overload) {
    var words = new ArrayList<String>();
    for (var from = 0; from < shares.length; from++) {
      var to = from;
      var sum = 0.0;
      while (to < shares.length && shares[to] >= TOO_FEW_TO_DRAW) {
        sum += shares[to++];
      }
      if (to > from) {
        words.add(stretch(from, to, shares.length) + " (" + ReportNumbers.percent(sum) + ")");
        from = to;
      }
    }
    if (overload > 0) {
      words.add("an overload (" + ReportNumbers.percent(overload) + ")");
    }
    return words.isEmpty() ? "nothing steady" : joined(words);
  }

  private String stretch(int from, int to, int bins) {
    var high = to == bins ? "more" : number(histogram.high() * to / bins);
    return number(histogram.high() * from / bins) + " to " + high + " " + unit;
  }

  private static String joined(List<String> words) {
    return words.size() < 2 ? words.get(0)
        : String.join(", ", words.subList(0, words.size() - 1)) + " and " + words.get(words.size() - 1);
  }

  private static String number(double value) {
    return value >= 10 ? Long.toString(Math.round(value))
        : ReportNumbers.number(BigDecimal.valueOf(Math.round(value * 10), 1));
  }

  private void text(double x, double y, String anchor, String words) {
    add("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>", x, y, anchor, Markup.escape(words));
  }

  private void add(String format, Object... values) {
    svg.append(String.format(Locale.ROOT, format, values));
  }
}
