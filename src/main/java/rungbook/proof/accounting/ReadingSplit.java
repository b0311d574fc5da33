package rungbook.proof.accounting;

import rungbook.circuit.Reading;
import rungbook.tree.Meter;
import rungbook.tree.Readings;
import rungbook.tree.Step;

/** Divides what arrives at a check with a meter among its ways, by the reading and the meter's error. */
public final class ReadingSplit {

  private final Segments segments;
  private final MeterError.Rectangular error;
  private final double[][] byWay;
  private final double[] stuck;

  /** @param ways how many the check has */
  ReadingSplit(Segments segments, MeterError.Rectangular error, int ways, int samples) {
    this.segments = segments;
    this.error = error;
    this.byWay = new double[ways][samples];
    this.stuck = new double[samples];
  }

  /** The split of a check by itself, without a tally of what is read. */
  public static ReadingSplit of(Step.MeterCheck check, Meter.Scale scale, int samples) {
    return new ReadingSplit(Segments.of(Readings.of(check, scale)), MeterError.of(scale), check.ways().size(), samples);
  }

  /** What goes each way; written over by the next call of {@link #divide}. */
  public double[] of(int way) {
    return way == Segments.NONE ? stuck : byWay[way];
  }

  public void divide(double[] readings, double[] weights) {
    for (double[] way : byWay) {
      java.util.Arrays.fill(way, 0);
    }
    java.util.Arrays.fill(stuck, 0);
    for (int sample = 0; sample < weights.length; sample++) {
      if (weights[sample] > 0) {
        divide(readings[sample], weights[sample], sample);
      }
    }
  }

  private void divide(double reading, double weight, int sample) {
    if (reading == Reading.UNSTEADY || reading == Reading.LIVE) {
      of(segments.noReadingWay())[sample] += weight;
      return;
    }
    double value = shownAbout(reading);
    if (value == Reading.OVERLOAD) {
      of(segments.overloadWay())[sample] += weight;
      return;
    }
    double a = reading == Reading.FLOATING ? 0 : error.halfWidth(value);
    int low = segments.at(value - a);
    if (!segments.overloads(value + a) && value + a < segments.end(low)) {
      of(segments.way(low))[sample] += weight;
      return;
    }
    spread(value, weight, low, sample);
  }

  private void spread(double value, double weight, int low, int sample) {
    double left = 1;
    for (int segment = low; segment < segments.size() && left > 0; segment++) {
      double below = error.below(value, segments.end(segment));
      double share = Math.max(0, below - (1 - left));
      of(segments.way(segment))[sample] += weight * share;
      left -= share;
    }
    if (left > 1e-12) {
      of(segments.overloadWay())[sample] += weight * left;
    }
  }

  /** Whether a reading may be shown so that it takes a way. */
  public boolean mayTake(double reading, int way) {
    if (reading == Reading.UNSTEADY || reading == Reading.LIVE) {
      return way == segments.noReadingWay();
    }
    if (reading == Reading.OVERLOAD) {
      return way == segments.overloadWay();
    }
    double value = shownAbout(reading);
    double a = reading == Reading.FLOATING ? 0 : error.halfWidth(value);
    return isShownBetween(value - a, value + a, way);
  }

  /** Whether some reading from one number to another may be shown so that it takes a way. */
  public boolean mayTake(double lowest, double highest, int way) {
    return isShownBetween(lowest - error.halfWidth(lowest), highest + error.halfWidth(highest), way);
  }

  private boolean isShownBetween(double low, double high, int way) {
    boolean takes = segments.overloads(high) && way == segments.overloadWay();
    for (int segment = segments.at(low); segment < segments.size() && !takes && segments.edge(segment) <= high;
        segment++) {
      takes = segments.way(segment) == way && segments.end(segment) > low;
    }
    return takes;
  }

  /** Leads that nothing ties together show about nothing. */
  static double shownAbout(double reading) {
    return reading == Reading.FLOATING ? 0 : reading;
  }
}
