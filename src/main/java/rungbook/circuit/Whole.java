package rungbook.circuit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A network that was eliminated as it stands: the full solve. */
final class Whole implements Network {

  private final Blueprint blueprint;
  private final NodeGroups groups;
  private final Factored factored;
  private final Rows volts;
  private final Map<Long, double[][]> seen = new HashMap<>();

  Whole(Blueprint blueprint, byte[] modes, Arrangement arrangement, Altered altered, Rows currents) {
    this.blueprint = blueprint;
    groups = blueprint.groups(modes, arrangement, altered);
    factored = blueprint.factor(modes, arrangement, altered, groups);
    volts = driven(modes, currents);
  }

  /** Voltages with each supply driving its own currents. */
  Rows driven(byte[] modes, Rows currents) {
    Rows x = blueprint.nodeRows();
    boolean[] fed = new boolean[x.re.length];
    List<Drive> drives = blueprint.wiring().drives();
    for (int i = 0; i < drives.size(); i++) {
      Link link = blueprint.wiring().links().get(drives.get(i).link());
      if (modes[drives.get(i).link()] > 0) {
        inject(x, link.a(), link.b(), currents.re[i], currents.im[i]);
        fed[link.a()] = true;
        fed[link.b()] = true;
      }
    }
    factored.solve(x, fed);
    return x;
  }

  private static void inject(Rows x, int a, int b, double[] re, double[] im) {
    if (a != 0) {
      Kernel.add(x.re[a], x.im[a], re, im);
    }
    if (b != 0) {
      Kernel.subtract(x.re[b], x.im[b], re, im);
    }
  }

  /** Voltages that one ampere from {@code b} to {@code a} causes with every source at rest. */
  Rows column(int a, int b) {
    Rows x = blueprint.nodeRows();
    if (a != 0) {
      java.util.Arrays.fill(x.re[a], 1);
    }
    if (b != 0) {
      java.util.Arrays.fill(x.re[b], -1);
    }
    boolean[] fed = new boolean[x.re.length];
    fed[a] = true;
    fed[b] = true;
    factored.solve(x, fed);
    return x;
  }

  @Override
  public Rows volts() {
    return volts;
  }

  @Override
  public boolean together(int a, int b) {
    return groups.together(a, b);
  }

  @Override
  public void seenFrom(int a, int b, double[] re, double[] im) {
    double[][] known = seen.computeIfAbsent((long) a << 32 | b, pair -> measure(a, b));
    System.arraycopy(known[0], 0, re, 0, re.length);
    System.arraycopy(known[1], 0, im, 0, im.length);
  }

  private double[][] measure(int a, int b) {
    double[][] ohms = new double[2][volts.re[0].length];
    factored.seenFrom(a, b, blueprint.scratch(), ohms[0], ohms[1]);
    return ohms;
  }

  @Override
  public void release() {
    factored.release(blueprint.pool());
    blueprint.pool().give(volts);
  }

  Pool pool() {
    return blueprint.pool();
  }
}
