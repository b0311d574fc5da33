package rungbook.circuit.solver;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.ComplexKernels;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.RowPool;
import rungbook.circuit.network.SourceBranch;

/** A network that was eliminated as it stands: the full solve. */
public final class SolvedNetwork implements Network {

  private final NetworkFactory blueprint;
  private final ConnectedComponents groups;
  private final FactorizedNetwork factored;
  private final ComplexRows volts;
  private final Map<Long, double[][]> seen = new HashMap<>();

  public SolvedNetwork(NetworkFactory blueprint, byte[] modes, TechnicianOverrides arrangement,
      FaultedParameters altered, ComplexRows currents) {
    this.blueprint = blueprint;
    groups = blueprint.groups(modes, arrangement, altered);
    factored = blueprint.factor(modes, arrangement, altered, groups);
    volts = driven(modes, currents);
  }

  /** Voltages with each supply driving its own currents. */
  public ComplexRows driven(byte[] modes, ComplexRows currents) {
    ComplexRows x = blueprint.nodeRows();
    boolean[] fed = new boolean[x.re.length];
    List<SourceBranch> drives = blueprint.wiring().drives();
    for (int i = 0; i < drives.size(); i++) {
      Branch link = blueprint.wiring().links().get(drives.get(i).link());
      if (modes[drives.get(i).link()] > 0) {
        inject(x, link.a(), link.b(), currents.re[i], currents.im[i]);
        fed[link.a()] = true;
        fed[link.b()] = true;
      }
    }
    factored.solve(x, fed);
    return x;
  }

  private static void inject(ComplexRows x, int a, int b, double[] re, double[] im) {
    if (a != 0) {
      ComplexKernels.add(x.re[a], x.im[a], re, im);
    }
    if (b != 0) {
      ComplexKernels.subtract(x.re[b], x.im[b], re, im);
    }
  }

  /** Voltages that one ampere from {@code b} to {@code a} causes with every source at rest. */
  ComplexRows column(int a, int b) {
    ComplexRows x = blueprint.nodeRows();
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
  public ComplexRows volts() {
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

  RowPool pool() {
    return blueprint.pool();
  }
}
