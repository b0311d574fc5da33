package rungbook.circuit;

import java.util.Arrays;
import java.util.IdentityHashMap;
import rungbook.circuit.network.BranchAdmittance;
import rungbook.circuit.network.ComplexKernels;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.Phasor;
import rungbook.circuit.sequence.CircuitModel;
import rungbook.circuit.solver.BranchMode;
import rungbook.circuit.solver.FaultedParameters;
import rungbook.circuit.solver.SolvedNetwork;
import rungbook.system.Terminal;

/** Computes what the meter shows on a solved network, for every sample of a block. */
final class MeterReadout {

  /** Less than a lead has to the other; no meter shows it. */
  private static final double NO_FARADS = 1e-14;

  private final CircuitModel model;
  private final IdentityHashMap<Terminal, Integer> nodes = new IdentityHashMap<>();
  private final double[] re;
  private final double[] im;
  private final double[] openRe;
  private final double[] openIm;

  MeterReadout(CircuitModel model) {
    this.model = model;
    int samples = model.parameters().size();
    re = new double[samples];
    im = new double[samples];
    openRe = new double[samples];
    openIm = new double[samples];
  }

  /**
   * Reads one probe on the network for alternating current. Of ohms, that is only whether the circuit is live; what is
   * not is left for {@link #ohms}.
   *
   * @param modes of the branches
   * @param shown receives the reading of each sample, coded as in {@link Reading}
   */
  void read(Probe probe, SolvedNetwork network, byte[] modes, FaultedParameters faulted, double[] shown) {
    int red = node(probe.red());
    int black = node(probe.black());
    if (probe.meter() == MeterFunction.AMPS) {
      amps(red, network, modes, faulted, shown);
    } else if (red < 0 || black < 0) {
      Arrays.fill(shown, probe.meter() == MeterFunction.OHMS ? Reading.OVERLOAD : Reading.FLOATING);
    } else if (probe.meter().passive()) {
      passive(probe.meter(), network, red, black, shown);
    } else {
      volts(probe.admittance(hertz()), network, red, black, shown);
    }
  }

  private double hertz() {
    return model.network().hertz();
  }

  /** −1 if there is none. Probes are few and read for every case, and a terminal is a record of long names. */
  private int node(Terminal terminal) {
    return nodes.computeIfAbsent(terminal, one -> model.network().node(one).orElse(-1));
  }

  /** |V / (1 + y Z)|: open-circuit voltage V, meter admittance y, impedance Z between the leads (Thévenin). */
  private void volts(Phasor y, SolvedNetwork network, int red, int black, double[] shown) {
    if (!network.connected(red, black)) {
      Arrays.fill(shown, Reading.FLOATING);
      return;
    }
    network.impedanceBetween(red, black, re, im);
    ComplexRows volts = network.volts();
    ComplexKernels.difference(openRe, openIm, volts.re[red], volts.im[red], volts.re[black], volts.im[black]);
    ComplexKernels.squaredMagnitude(shown, openRe, openIm);
    divide(shown, y.re(), y.im());
  }

  /** x = √(x / |1 + y Z|²). */
  private void divide(double[] x, double conductance, double susceptance) {
    addLoad(openRe, openIm, conductance, susceptance);
    ComplexKernels.squaredMagnitude(re, openRe, openIm);
    for (int s = 0; s < x.length; s++) {
      x[s] = Math.sqrt(x[s] / re[s]);
    }
  }

  /** x = 1 + y Z. */
  private void addLoad(double[] xr, double[] xi, double conductance, double susceptance) {
    double[] resistance = re;
    double[] reactance = im;
    for (int s = 0; s < xr.length; s++) {
      double p = resistance[s];
      double q = reactance[s];
      xr[s] = 1 + conductance * p - susceptance * q;
      xi[s] = conductance * q + susceptance * p;
    }
  }

  private void passive(MeterFunction meter, SolvedNetwork network, int red, int black, double[] shown) {
    double[] volts = new double[shown.length];
    volts(MeterFunction.VOLTS_LOW_IMPEDANCE.admittance(hertz()), network, red, black, volts);
    if (meter == MeterFunction.MICROFARADS) {
      microfarads(network, red, black, shown);
    }
    for (int s = 0; s < shown.length; s++) {
      shown[s] = volts[s] > MeterFunction.DEAD_VOLTS ? Reading.LIVE : shown[s];
    }
  }

  /**
   * Reads ohms on the network for direct current.
   *
   * @param shown receives the reading of each sample, coded as in {@link Reading}
   */
  void ohms(Probe probe, SolvedNetwork direct, double[] shown) {
    int red = node(probe.red());
    int black = node(probe.black());
    if (red < 0 || black < 0 || !direct.connected(red, black)) {
      Arrays.fill(shown, Reading.OVERLOAD);
      return;
    }
    direct.impedanceBetween(red, black, shown, im);
  }

  private void microfarads(SolvedNetwork network, int red, int black, double[] shown) {
    if (!network.connected(red, black)) {
      Arrays.fill(shown, 0);
      return;
    }
    network.impedanceBetween(red, black, re, im);
    for (int s = 0; s < shown.length; s++) {
      shown[s] = microfarads(re[s], im[s]);
    }
  }

  /**
   * The capacitance −X / (|Z|² 2πf); an inductive impedance has no steady reading. Of a pure resistance, rounding alone
   * would say whether it is inductive.
   */
  private double microfarads(double resistance, double reactance) {
    double susceptance = -reactance / (resistance * resistance + reactance * reactance);
    double farads = susceptance / (2 * Math.PI * hertz());
    return farads >= -NO_FARADS ? Math.max(0, farads) * 1e6 : Reading.UNSTEADY;
  }

  private void amps(int node, SolvedNetwork network, byte[] modes, FaultedParameters faulted, double[] shown) {
    int branch = node < 0 ? -1 : model.network().conductorAt(node).orElse(-1);
    Arrays.fill(shown, 0);
    byte conduction = branch < 0 ? BranchMode.ABSENT : BranchMode.conduction(modes[branch]);
    if (conduction == BranchMode.ABSENT || faulted.opens(branch)) {
      return;
    }
    BranchAdmittance y = faulted.effective(branch, model.parameters().alternating(conduction));
    ComplexRows volts = network.volts();
    for (int s = 0; s < shown.length; s++) {
      double vr = volts.re[y.a()][s] - volts.re[y.b()][s];
      double vi = volts.im[y.a()][s] - volts.im[y.b()][s];
      shown[s] = Math.hypot(vr, vi) * Math.hypot(y.re()[s], y.im()[s]);
    }
  }
}
