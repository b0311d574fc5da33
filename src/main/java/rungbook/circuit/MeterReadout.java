package rungbook.circuit;

import java.util.Arrays;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.Phasor;
import rungbook.circuit.network.RankOneUpdate;
import rungbook.circuit.sequence.StateSolver;
import rungbook.circuit.sequence.SteadyStateSearch;
import rungbook.circuit.solver.Network;
import rungbook.system.Terminal;

/** What the meter shows on the networks of one settled case, for every sample. */
final class MeterReadout {

  private final StateSolver run;
  private final SteadyStateSearch settling;
  private final byte[] modes;
  private final Network network;
  private final double[] re;
  private final double[] im;

  MeterReadout(StateSolver run, SteadyStateSearch settling, byte[] modes) {
    this.run = run;
    this.settling = settling;
    this.modes = modes;
    this.network = settling.network(modes);
    int samples = run.plant().sampled().size();
    re = new double[samples];
    im = new double[samples];
  }

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
    return run.plant().wiring().hertz();
  }

  private int node(Terminal terminal) {
    return run.plant().wiring().node(terminal).orElse(-1);
  }

  /** The open voltage, divided between what is seen from the leads and the meter. */
  private void volts(Phasor y, int red, int black, double[] shown) {
    if (!network.together(red, black)) {
      Arrays.fill(shown, Reading.FLOATING);
      return;
    }
    network.seenFrom(red, black, re, im);
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
    Network direct = settling.direct(modes);
    if (!direct.together(red, black)) {
      Arrays.fill(shown, Reading.OVERLOAD);
      return;
    }
    direct.seenFrom(red, black, re, im);
    System.arraycopy(re, 0, shown, 0, shown.length);
  }

  private void microfarads(int red, int black, double[] shown) {
    if (!network.together(red, black)) {
      Arrays.fill(shown, 0);
      return;
    }
    network.seenFrom(red, black, re, im);
    for (int s = 0; s < shown.length; s++) {
      shown[s] = microfarads(re[s], im[s]);
    }
  }

  /** What a capacitance meter makes of an impedance in ohms: an inductive one leaves it without a number. */
  private double microfarads(double ohms, double reactance) {
    double susceptance = -reactance / (ohms * ohms + reactance * reactance);
    double farads = susceptance / (2 * Math.PI * run.plant().wiring().hertz());
    return farads >= 0 ? farads * 1e6 : Reading.UNSTEADY;
  }

  private void amps(int node, double[] shown) {
    int link = node < 0 ? -1 : run.plant().wiring().conductorAt(node).orElse(-1);
    Arrays.fill(shown, 0);
    if (link < 0 || modes[link] == 0 || settling.altered().opens(link)) {
      return;
    }
    RankOneUpdate y = settling.altered().effective(link, run.plant().sampled().alternating(modes[link]));
    ComplexRows volts = network.volts();
    for (int s = 0; s < shown.length; s++) {
      double vr = volts.re[y.a()][s] - volts.re[y.b()][s];
      double vi = volts.im[y.a()][s] - volts.im[y.b()][s];
      shown[s] = Math.hypot(vr, vi) * Math.hypot(y.re()[s], y.im()[s]);
    }
  }
}
