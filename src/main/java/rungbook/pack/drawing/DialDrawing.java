package rungbook.pack.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rungbook.system.Quantity;
import rungbook.tree.Meter;

/**
 * The dial of a meter with its pointer at one quantity: a stop for each quantity that the meter measures, around the
 * upper part of a knob. Only the one that is set is written out, as large as the text.
 */
public final class DialDrawing {

  private static final int MIDDLE = 40;
  private static final int STOPS = 33;
  private static final int POINTER = 25;
  private static final double FIRST = Math.toRadians(-130);
  private static final double ARC = Math.toRadians(260);

  private DialDrawing() {}

  /** As inline SVG; the sentence beside it says the same. */
  public static String of(Meter meter, Quantity measured) {
    var svg = new Svg();
    Quantity set = measured == Quantity.TEMPERATURE_DIFFERENCE ? Quantity.TEMPERATURE : measured;
    List<Quantity> stops = new ArrayList<>(meter.scales().keySet());
    stops.remove(Quantity.TEMPERATURE_DIFFERENCE); // two readings at the stop of the temperature
    stops.sort(Comparator.naturalOrder());
    for (int stop = 0; stop < stops.size(); stop++) {
      double angle = angle(stop, stops.size());
      boolean here = stops.get(stop) == set;
      svg.path(here ? "stop here" : "stop", "M%d %dv.1", x(angle, STOPS), y(angle, STOPS));
    }
    double angle = angle(Math.max(0, stops.indexOf(set)), stops.size());
    svg.path("knob", "M40 18a22 22 0 1 1 0 44a22 22 0 1 1 0-44");
    svg.path("pointer", "M%d %dL%d %d", x(angle, -POINTER / 2), y(angle, -POINTER / 2), x(angle, POINTER),
        y(angle, POINTER));
    return "<svg class=\"dial\" viewBox=\"0 0 80 80\" aria-hidden=\"true\">" + svg + "</svg>";
  }

  private static double angle(int stop, int stops) {
    return stops < 2 ? 0 : FIRST + ARC * stop / (stops - 1);
  }

  private static int x(double angle, int radius) {
    return (int) Math.round(MIDDLE + radius * Math.sin(angle));
  }

  private static int y(double angle, int radius) {
    return (int) Math.round(MIDDLE - radius * Math.cos(angle));
  }
}
