package rungbook.circuit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rungbook.circuit.network.Phasor;

/**
 * Solves a {@link Schematic}'s netlist in decimal arithmetic of 50 digits: slow, and free of the rounding that hides a
 * nanosiemens beside fifty siemens. Decides where two programs in double precision differ.
 */
final class Exact {

  private static final MathContext DIGITS = new MathContext(50);

  private record Z(BigDecimal re, BigDecimal im) {
    static final Z ZERO = new Z(BigDecimal.ZERO, BigDecimal.ZERO);

    static Z of(double re, double im) {
      return new Z(new BigDecimal(re), new BigDecimal(im));
    }

    Z plus(Z o) {
      return new Z(re.add(o.re, DIGITS), im.add(o.im, DIGITS));
    }

    Z minus(Z o) {
      return new Z(re.subtract(o.re, DIGITS), im.subtract(o.im, DIGITS));
    }

    Z times(Z o) {
      return new Z(re.multiply(o.re, DIGITS).subtract(im.multiply(o.im, DIGITS), DIGITS),
          re.multiply(o.im, DIGITS).add(im.multiply(o.re, DIGITS), DIGITS));
    }

    Z over(Z o) {
      BigDecimal square = o.re.multiply(o.re, DIGITS).add(o.im.multiply(o.im, DIGITS), DIGITS);
      Z top = times(new Z(o.re, o.im.negate()));
      return new Z(top.re.divide(square, DIGITS), top.im.divide(square, DIGITS));
    }

    boolean isZero() {
      return re.signum() == 0 && im.signum() == 0;
    }
  }

  private final Map<String, TreeMap<String, Z>> rows = new HashMap<>();
  private final Map<String, Z> right = new HashMap<>();
  private final Map<String, Z> volts = new HashMap<>();

  static Exact solve(Netlist netlist) {
    var exact = new Exact();
    var outer = new HashMap<String, Element.Branch>();
    for (Element element : netlist.elements()) {
      if (element instanceof Element.Branch b) {
        outer.put(b.b(), b);
        outer.putIfAbsent(b.a(), b);
      }
    }
    var inner = new HashSet<String>();
    for (Element element : netlist.elements()) {
      if (element instanceof Element.Voltage v) {
        Element.Branch behind = outer.get(v.plus());
        inner.add(behind.name());
        Z y = admittance(behind, netlist.hertz());
        exact.stamp(List.of(behind.a(), v.minus()), new double[] {1, -1}, y);
        exact.inject(behind.a(), y.times(Z.of(v.volts().re(), v.volts().im())));
        exact.inject(v.minus(), Z.ZERO.minus(y.times(Z.of(v.volts().re(), v.volts().im()))));
      } else if (element instanceof Element.Transformer t) {
        Element.Branch leakage = netlist.elements().stream()
            .filter(e -> e instanceof Element.Branch b && b.a().equals(t.secondaryA()))
            .map(e -> (Element.Branch) e).findFirst().orElseThrow();
        inner.add(leakage.name());
        exact.stamp(List.of(t.primaryA(), t.primaryB(), leakage.b(), t.secondaryB()),
            new double[] {-t.ratio(), t.ratio(), 1, -1},
            admittance(leakage, netlist.hertz()));
      }
    }
    for (Element element : netlist.elements()) {
      if (element instanceof Element.Branch b && !inner.contains(b.name())) {
        exact.stamp(List.of(b.a(), b.b()), new double[] {1, -1}, admittance(b, netlist.hertz()));
      }
    }
    var islands = Islands.of(netlist);
    var tied = new HashSet<String>();
    for (String node : netlist.nodes()) {
      if (islands.floating(node) && exact.rows.containsKey(node) && tied.add(islands.root(node))) {
        exact.stamp(List.of(node), new double[] {1}, Z.of(1, 0));
      }
    }
    exact.eliminate();
    return exact;
  }

  private static Z admittance(Element.Branch b, double hertz) {
    Phasor ohms = b.impedance(hertz);
    return Z.of(1, 0).over(Z.of(ohms.re(), ohms.im()));
  }

  private void stamp(List<String> nodes, double[] u, Z y) {
    for (int i = 0; i < u.length; i++) {
      for (int j = 0; j < u.length; j++) {
        if (!nodes.get(i).equals("0") && !nodes.get(j).equals("0")) {
          add(nodes.get(i), nodes.get(j), y.times(Z.of(u[i], 0)).times(Z.of(u[j], 0)));
        }
      }
    }
  }

  private void add(String i, String j, Z value) {
    rows.computeIfAbsent(i, n -> new TreeMap<>()).merge(j, value, Z::plus);
  }

  private void inject(String node, Z amps) {
    if (!node.equals("0")) {
      right.merge(node, amps, Z::plus);
    }
  }

  private void eliminate() {
    var order = new java.util.ArrayList<String>();
    var done = new HashSet<String>();
    while (done.size() < rows.size()) {
      String pivot = rows.keySet().stream().filter(n -> !done.contains(n))
          .min(java.util.Comparator.<String>comparingInt(n -> rows.get(n).size()).thenComparing(n -> n)).orElseThrow();
      done.add(pivot);
      order.add(pivot);
      var row = rows.get(pivot);
      for (String other : List.copyOf(row.keySet())) {
        if (!done.contains(other)) {
          subtract(pivot, other, row);
        }
      }
    }
    java.util.Collections.reverse(order);
    order.forEach(this::substitute);
  }

  private void subtract(String pivot, String other, TreeMap<String, Z> row) {
    Z factor = rows.get(other).get(pivot).over(row.get(pivot));
    rows.get(other).remove(pivot);
    row.forEach((column, value) -> {
      if (!column.equals(pivot)) {
        add(other, column, Z.ZERO.minus(factor.times(value)));
      }
    });
    right.merge(other, Z.ZERO.minus(factor.times(right.getOrDefault(pivot, Z.ZERO))), Z::plus);
  }

  private void substitute(String node) {
    Z sum = right.getOrDefault(node, Z.ZERO);
    var row = rows.get(node);
    for (var entry : row.entrySet()) {
      if (!entry.getKey().equals(node) && !entry.getValue().isZero()) {
        sum = sum.minus(entry.getValue().times(volts.get(entry.getKey())));
      }
    }
    volts.put(node, sum.over(row.get(node)));
  }

  Phasor volts(String red, String black) {
    Z difference = volts.getOrDefault(red, Z.ZERO).minus(volts.getOrDefault(black, Z.ZERO));
    return new Phasor(difference.re().doubleValue(), difference.im().doubleValue());
  }
}
