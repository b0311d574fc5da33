package rungbook.circuit.solver;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.ComplexKernels;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.RowPool;
import rungbook.circuit.network.SourceBranch;

/** A network that was factorized and solved in full. */
public final class SolvedNetwork implements Network {

  private final NetworkFactory factory;
  private final ConnectedComponents components;
  private final FactorizedNetwork factorized;
  private final ComplexRows volts;
  private final Map<Long, double[][]> impedances = new HashMap<>();

  public SolvedNetwork(NetworkFactory factory, byte[] modes, TechnicianOverrides overrides,
      FaultedParameters faulted, ComplexRows currents) {
    this.factory = factory;
    components = factory.components(modes, overrides, faulted);
    factorized = factory.factor(modes, overrides, faulted, components);
    volts = nodeVoltages(modes, currents);
  }

  /** Solves for the node voltages, [node][sample], from the Norton currents of the sources, [source][sample]. */
  public ComplexRows nodeVoltages(byte[] modes, ComplexRows currents) {
    ComplexRows x = factory.nodeRows();
    boolean[] driven = new boolean[x.re.length];
    List<SourceBranch> sources = factory.network().sources();
    for (int i = 0; i < sources.size(); i++) {
      Branch branch = factory.network().branches().get(sources.get(i).branch());
      if (modes[sources.get(i).branch()] > 0) {
        inject(x, branch.a(), branch.b(), currents.re[i], currents.im[i]);
        driven[branch.a()] = true;
        driven[branch.b()] = true;
      }
    }
    factorized.solve(x, driven);
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

  /** Node voltages of one ampere from {@code b} to {@code a} with all sources off, [node][sample]. */
  ComplexRows column(int a, int b) {
    ComplexRows x = factory.nodeRows();
    if (a != 0) {
      Arrays.fill(x.re[a], 1);
    }
    if (b != 0) {
      Arrays.fill(x.re[b], -1);
    }
    boolean[] driven = new boolean[x.re.length];
    driven[a] = true;
    driven[b] = true;
    factorized.solve(x, driven);
    return x;
  }

  @Override
  public ComplexRows volts() {
    return volts;
  }

  @Override
  public boolean connected(int a, int b) {
    return components.connected(a, b);
  }

  @Override
  public void impedanceBetween(int a, int b, double[] re, double[] im) {
    double[][] known = impedances.computeIfAbsent((long) a << 32 | b, pair -> computeImpedance(a, b));
    System.arraycopy(known[0], 0, re, 0, re.length);
    System.arraycopy(known[1], 0, im, 0, im.length);
  }

  private double[][] computeImpedance(int a, int b) {
    double[][] ohms = new double[2][volts.re[0].length];
    factorized.impedanceBetween(a, b, factory.scratch(), ohms[0], ohms[1]);
    return ohms;
  }

  @Override
  public void release() {
    factorized.release(factory.pool());
    factory.pool().give(volts);
  }

  RowPool pool() {
    return factory.pool();
  }
}
