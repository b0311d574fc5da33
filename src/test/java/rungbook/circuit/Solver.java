package rungbook.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ejml.data.ZMatrixRMaj;
import org.ejml.dense.row.CommonOps_ZDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_ZDRM;
import rungbook.circuit.network.Phasor;

/**
 * AC steady state by modified nodal analysis with complex phasors.
 *
 * <p>A x = z: the unknowns x are the node voltages and the currents of voltage sources,
 * transformers and branches without impedance. A floating island is tied to ground at one node;
 * no current flows through such a tie, so the differences within the island are its own.
 */
public final class Solver {

  /** Largest share of the source that Kirchhoff's current law may be off by. */
  static final double RESIDUAL = 1e-9;

  private final Netlist netlist;
  private final Map<String, Integer> nodeRows = new HashMap<>();
  private final Map<String, Integer> currentRows = new LinkedHashMap<>();
  private final List<Integer> ties = new ArrayList<>();
  private final ZMatrixRMaj a;
  private final ZMatrixRMaj z;

  private Solver(Netlist netlist) {
    this.netlist = netlist;
    netlist.nodes().forEach(node -> nodeRows.put(node, nodeRows.size()));
    for (Element element : netlist.elements()) {
      if (carriesUnknownCurrent(element)
          && currentRows.put(element.name(), nodeRows.size() + currentRows.size()) != null) {
        throw new IllegalArgumentException("two elements are called " + element.name());
      }
    }
    int size = nodeRows.size() + currentRows.size();
    a = new ZMatrixRMaj(size, size);
    z = new ZMatrixRMaj(size, 1);
  }

  /**
   * Solves for every voltage and current.
   *
   * @throws SingularCircuit if the circuit has no answer
   */
  public static Solution solve(Netlist netlist) {
    var solver = new Solver(netlist);
    var islands = Islands.of(netlist);
    solver.stampAll(islands);
    var x = solver.factorAndSolve();
    return new Solution(netlist, islands, solver.volts(x), solver.amps(x));
  }

  private boolean carriesUnknownCurrent(Element element) {
    return element instanceof Element.Voltage
        || element instanceof Element.Transformer
        || element instanceof Element.Branch b && b.impedance(netlist.hertz()).magnitude() == 0;
  }

  private void stampAll(Islands islands) {
    netlist.elements().forEach(this::stamp);
    var tied = new HashSet<String>();
    for (String node : netlist.nodes()) {
      if (islands.floating(node) && tied.add(islands.root(node))) {
        ties.add(row(node));
        add(row(node), row(node), Phasor.ONE);
      }
    }
  }

  private void stamp(Element element) {
    if (element instanceof Element.Branch b) {
      stampBranch(b);
    } else if (element instanceof Element.Voltage v) {
      stampLoop(v.name(), v.plus(), v.minus(), v.volts());
    } else if (element instanceof Element.Current c) {
      inject(row(c.to()), c.amps());
      inject(row(c.from()), c.amps().times(-1));
    } else if (element instanceof Element.Transformer t) {
      stampTransformer(t);
    }
  }

  private void stampBranch(Element.Branch b) {
    if (currentRows.containsKey(b.name())) {
      stampLoop(b.name(), b.a(), b.b(), Phasor.ZERO);
      return;
    }
    Phasor y = b.impedance(netlist.hertz()).inverse();
    add(row(b.a()), row(b.a()), y);
    add(row(b.b()), row(b.b()), y);
    add(row(b.a()), row(b.b()), y.times(-1));
    add(row(b.b()), row(b.a()), y.times(-1));
  }

  private void stampLoop(String name, String plus, String minus, Phasor volts) {
    int current = currentRows.get(name);
    pair(row(plus), current, Phasor.ONE);
    pair(row(minus), current, Phasor.of(-1));
    inject(current, volts);
  }

  private void stampTransformer(Element.Transformer t) {
    int current = currentRows.get(t.name());
    pair(row(t.secondaryA()), current, Phasor.ONE);
    pair(row(t.secondaryB()), current, Phasor.of(-1));
    pair(row(t.primaryA()), current, Phasor.of(-t.ratio()));
    pair(row(t.primaryB()), current, Phasor.of(t.ratio()));
  }

  private void pair(int i, int j, Phasor value) {
    add(i, j, value);
    add(j, i, value);
  }

  private int row(String node) {
    return nodeRows.getOrDefault(node, -1);
  }

  private void add(int i, int j, Phasor value) {
    if (i >= 0 && j >= 0) {
      a.set(i, j, a.getReal(i, j) + value.re(), a.getImag(i, j) + value.im());
    }
  }

  private void inject(int i, Phasor value) {
    if (i >= 0) {
      z.set(i, 0, z.getReal(i, 0) + value.re(), z.getImag(i, 0) + value.im());
    }
  }

  private ZMatrixRMaj factorAndSolve() {
    var x = new ZMatrixRMaj(a.numRows, 1);
    if (a.numRows == 0) {
      return x;
    }
    var lu = LinearSolverFactory_ZDRM.lu(a.numRows);
    if (!lu.setA(a.copy())) {
      throw new SingularCircuit("a loop of sources without impedance, or a source into nothing");
    }
    lu.solve(z, x);
    refuseWrongAnswer(x);
    return x;
  }

  private void refuseWrongAnswer(ZMatrixRMaj x) {
    var residual = new ZMatrixRMaj(a.numRows, 1);
    CommonOps_ZDRM.mult(a, x, residual);
    CommonOps_ZDRM.subtract(z, residual, residual);
    double allowed = RESIDUAL * Math.max(CommonOps_ZDRM.elementMaxAbs(z), Double.MIN_NORMAL);
    for (double error : residual.data) {
      // written so that a NaN is refused as well
      if (!(Math.abs(error) <= allowed)) {
        throw new SingularCircuit("the circuit leaves a voltage or a current undecided");
      }
    }
    for (int tieToGround : ties) {
      if (!(Math.hypot(x.getReal(tieToGround, 0), x.getImag(tieToGround, 0)) <= allowed)) {
        throw new SingularCircuit("a source drives a current that has no way back");
      }
    }
  }

  private Map<String, Phasor> volts(ZMatrixRMaj x) {
    var volts = new LinkedHashMap<String, Phasor>();
    volts.put(Netlist.GROUND, Phasor.ZERO);
    nodeRows.forEach((node, i) -> volts.put(node, new Phasor(x.getReal(i, 0), x.getImag(i, 0))));
    return volts;
  }

  /** A positive unknown flows from the first end through the element for sources and shorts. */
  private Map<String, Phasor> amps(ZMatrixRMaj x) {
    var amps = new LinkedHashMap<String, Phasor>();
    currentRows.forEach((name, i) -> amps.put(name, new Phasor(x.getReal(i, 0), x.getImag(i, 0))));
    return amps;
  }
}
