package rungbook.circuit.export;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rungbook.text.JsonText;

/**
 * Quantities over all installations. Nearly all are a constant times one of few rows, such as the tolerance of a load,
 * so a quantity is written as that constant and the number of the row. Row 0 is 1 in every installation.
 */
final class Quantities {

  /** Two rows that differ by less are one: the arithmetic of doubles differs by as much. */
  private static final double ALIKE = 1e-14;

  private final int installations;
  private final List<double[]> rows = new ArrayList<>();
  private final Map<String, List<Integer>> rowsByDigits = new HashMap<>();
  private final Interned quantities = new Interned();

  Quantities(int installations) {
    this.installations = installations;
    double[] one = new double[installations];
    Arrays.fill(one, 1);
    row(one);
  }

  /** The number of a real quantity. */
  int of(double[] values) {
    return of(values, new double[installations]);
  }

  /** The number of a complex quantity. */
  int of(double[] re, double[] im) {
    String real = part(re);
    String imaginary = part(im);
    return quantities.of("[" + real + (imaginary.equals("0,0") ? "" : "," + imaginary) + "]");
  }

  private String part(double[] values) {
    double scale = Arrays.stream(values).filter(value -> value != 0).findFirst().orElse(0);
    if (scale == 0) {
      return "0,0";
    }
    double[] shape = new double[installations];
    for (int i = 0; i < installations; i++) {
      shape[i] = values[i] / scale;
    }
    return JsonText.number(scale) + "," + row(shape);
  }

  private int row(double[] shape) {
    List<Integer> near = rowsByDigits.computeIfAbsent(digits(shape), key -> new ArrayList<>());
    for (int number : near) {
      if (isAlike(rows.get(number), shape)) {
        return number;
      }
    }
    rows.add(shape);
    near.add(rows.size() - 1);
    return rows.size() - 1;
  }

  /** Few digits of the shape, so that only near ones are compared. */
  private static String digits(double[] shape) {
    var digits = new StringBuilder();
    for (double value : shape) {
      digits.append(Math.round(value * 1e6)).append(' ');
    }
    return digits.toString();
  }

  private static boolean isAlike(double[] one, double[] other) {
    for (int i = 0; i < one.length; i++) {
      if (!(Math.abs(one[i] - other[i]) <= ALIKE * Math.abs(one[i]))) {
        return false;
      }
    }
    return true;
  }

  List<String> all() {
    return quantities.all();
  }

  /** All rows as doubles of 64 bits, the least byte first, in base 64. */
  String rows() {
    ByteBuffer bytes = ByteBuffer.allocate(rows.size() * installations * Double.BYTES).order(ByteOrder.LITTLE_ENDIAN);
    for (double[] row : rows) {
      for (double value : row) {
        bytes.putDouble(value);
      }
    }
    return Base64.getEncoder().encodeToString(bytes.array());
  }
}
