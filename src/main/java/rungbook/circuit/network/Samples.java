package rungbook.circuit.network;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The installations that a system is evaluated on. */
public record Samples(List<Draw> draws) {

  /** The default number for a report. */
  public static final int USUAL = 256;

  public Samples {
    draws = List.copyOf(draws);
  }

  public int size() {
    return draws.size();
  }

  /** Uniform, independent draws for every part; the same seed gives the same draws. */
  public static Samples seeded(long seed, int size) {
    var draws = new ArrayList<Draw>();
    for (int i = 0; i < size; i++) {
      long sample = mix(seed + mix(i));
      draws.add((tolerance, part) -> uniform(mix(sample ^ mix(tolerance.ordinal() + 31L * part.hashCode()))));
    }
    return new Samples(draws);
  }

  /**
   * The middle, then corners of the tolerance box; each tolerance moves all parts together. They are every corner of
   * the healthy system's tolerances; a fault's is at the high end in half of them, the half with an odd number of high
   * ends (a half fraction of two levels, so that it is at either end with any of the others).
   */
  public static Samples corners() {
    var draws = new ArrayList<Draw>();
    draws.add(Draw.MIDDLE);
    for (int corner = 0; corner < 1 << Tolerance.FAULT.ordinal(); corner++) {
      int bits = corner | (Integer.bitCount(corner) & 1) << Tolerance.FAULT.ordinal();
      draws.add((tolerance, part) -> (bits >> tolerance.ordinal() & 1) == 1 ? 1 : -1);
    }
    return new Samples(draws);
  }

  /** A fault at either end of its range, with all else in the middle. */
  public static Samples faultEnds() {
    return new Samples(List.of((tolerance, part) -> tolerance == Tolerance.FAULT ? -1 : 0,
        (tolerance, part) -> tolerance == Tolerance.FAULT ? 1 : 0));
  }

  /**
   * The middle, then so few corners that each three tolerances still meet in every combination: a two-level fractional
   * factorial of resolution IV. The pattern of each tolerance is a different mask of an odd number of bits.
   */
  public static Samples fewCorners() {
    int tolerances = Tolerance.values().length;
    int bits = 1;
    while (1 << (bits - 1) < tolerances) {
      bits++;
    }
    int[] odd = IntStream.range(1, 1 << bits).filter(mask -> Integer.bitCount(mask) % 2 == 1).toArray();
    var draws = new ArrayList<Draw>();
    draws.add(Draw.MIDDLE);
    for (int corner = 0; corner < 1 << bits; corner++) {
      int run = corner;
      draws.add((tolerance, part) -> Integer.bitCount(run & odd[tolerance.ordinal()]) % 2 == 1 ? 1 : -1);
    }
    return new Samples(draws);
  }

  /**
   * The corners at which voltages are highest: full supply, with transformers, loads and the fault at either end and
   * all else in the middle.
   */
  public static Samples highVoltage() {
    var draws = new ArrayList<Draw>();
    for (int corner = 0; corner < 8; corner++) {
      int transformer = (corner & 1) == 0 ? 1 : -1;
      int load = (corner & 2) == 0 ? 1 : -1;
      int fault = (corner & 4) == 0 ? 1 : -1;
      draws.add((tolerance, part) -> switch (tolerance) {
        case SUPPLY -> 1;
        case TRANSFORMER -> transformer;
        case LOAD -> load;
        case FAULT -> fault;
        case TEMPERATURE, LENGTH, PICK_UP, CAPACITANCE -> 0;
      });
    }
    return new Samples(draws);
  }

  /** The middle, few corners, a fault at its ends, and where voltages are highest. */
  public static Samples extremes() {
    return new Samples(
        Stream.of(fewCorners(), faultEnds(), highVoltage()).flatMap(few -> few.draws().stream()).toList());
  }

  /** The finalizer of SplitMix64. */
  private static long mix(long z) {
    z = (z ^ z >>> 30) * 0xbf58476d1ce4e5b9L + 0x9e3779b97f4a7c15L;
    z = (z ^ z >>> 27) * 0x94d049bb133111ebL;
    return z ^ z >>> 31;
  }

  private static double uniform(long bits) {
    return (bits >>> 11) * 0x1.0p-52 - 1;
  }
}
