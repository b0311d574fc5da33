package rungbook.circuit;

import java.util.Arrays;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.Phasor;
import rungbook.circuit.network.RankOneUpdate;
import rungbook.circuit.sequence.StateSolver;
import rungbook.circuit.sequence.SteadyStateSearch;
import rungbook.circuit.solver.Network;
import rungbook.system.Terminal;

/** Computes what the meter shows on the network of one case in one steady state, for every sample. */
final class MeterReadout {

  private final StateSolver solver;
  private final SteadyStateSearch search;
  private final byte[] modes;
  private final Network network;
  private final double[] re;
  private final double[] im;

  MeterReadout(StateSolver solver, SteadyStateSearch search, byte[] modes) {
    this.solver = solver;
    this.search = search;
    this.modes = modes;
    this.network = search.network(modes);
    int samples = solver.model().parameters().size();
    re = new double[samples];
    im = new double[samples];
  }

  /**
   * Reads one probe.
   *
   * @param shown receives the reading of each sample, coded as in {@link Reading}
   */
  void read(Probe probe, double[] shown) {
    int red = node(probe.red());
    int black = node(probe.black());
    if (probe.meter() == MeterFunction.AMPS) {
      amps(red, shown);
    } else if (red < 0 || black < 0) {
      Arrays.fill(shown, probe.meter() == MeterFunction.OHMS ? Reading.OVERLOAD : Reading.FLOATING);
    } else if (probe.meter().passive()) {
      volts(MeterFunction.VOLTS_LOW_IMPEDANCE.admittance(hertz()), red, black, shown);
      passive(probe.meter(), red, black, shown);
    } else {
      volts(probe.admittance(hertz()), red, black, shown);
    }
  }

  private double hertz() {
    return solver.model().network().hertz();
  }

  private int node(Terminal terminal) {
    return solver.model().network().node(terminal).orElse(-1);
  }

  /** |V / (1 + y Z)|: open-circuit voltage V, meter admittance y, impedance Z between the leads (Thévenin). */
  private void volts(Phasor y, int red, int black, double[] shown) {
    if (!network.connected(red, black)) {
      Arrays.fill(shown, Reading.FLOATING);
      return;
    }
    network.impedanceBetween(red, black, re, im);
    ComplexRows volts = network.volts();
    for (int s = 0; s < shown.length; s++) {
      double vr = volts.re[red][s] - volts.re[black][s];
      double vi = volts.im[red][s] - volts.im[black][s];
      double dr = 1 + y.re() * re[s] - y.im() * im[s];
      double di = y.re() * im[s] + y.im() * re[s];
      shown[s] = Math.sqrt((vr * vr + vi * vi) / (dr * dr + di * di));
    }
  }

  private void passive(MeterFunction meter, int red, int black, double[] shown) {
    double[] volts = shown.clone();
    if (meter == MeterFunction.OHMS) {
      ohms(red, black, shown);
    } else {
      microfarads(red, black, shown);
    }
    for (int s = 0; s < shown.length; s++) {
      shown[s] = volts[s] > MeterFunction.DEAD_VOLTS ? Reading.LIVE : shown[s];
    }
  }

  private void ohms(int red, int black, double[] shown) {
    Network direct = search.direct(modes);
    if (!direct.connected(red, black)) {
      Arrays.fill(shown, Reading.OVERLOAD);
      return;
    }
    direct.impedanceBetween(red, black, re, im);
    System.arraycopy(re, 0, shown, 0, shown.length);
  }

  private void microfarads(int red, int black, double[] shown) {
    if (!network.connected(red, black)) {
      Arrays.fill(shown, 0);
      return;
    }
    network.impedanceBetween(red, black, re, im);
    for (int s = 0; s < shown.length; s++) {
      shown[s] = microfarads(re[s], im[s]);
    }
  }

  /** The capacitance −X / (|Z|² 2πf); an inductive impedance has no steady reading. */
  private double microfarads(double resistance, double reactance) {
    double susceptance = -reactance / (resistance * resistance + reactance * reactance);
    double farads = susceptance / (2 * Math.PI * hertz());
    return farads >= 0 ? farads * 1e6 : Reading.UNSTEADY;
  }

  private void amps(int node, double[] shown) {
    int branch = node < 0 ? -1 : solver.model().network().conductorAt(node).orElse(-1);
    Arrays.fill(shown, 0);
    if (branch < 0 || modes[branch] == 0 || search.faulted().opens(branch)) {
      return;
    }
    RankOneUpdate y = search.faulted().effective(branch, solver.model().parameters().alternating(modes[branch]));
    ComplexRows volts = network.volts();
    for (int s = 0; s < shown.length; s++) {
      double vr = volts.re[y.a()][s] - volts.re[y.b()][s];
      double vi = volts.im[y.a()][s] - volts.im[y.b()][s];
      shown[s] = Math.hypot(vr, vi) * Math.hypot(y.re()[s], y.im()[s]);
    }
  }
}
