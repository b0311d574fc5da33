package rungbook.proof.plan;

import java.io.DataInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rungbook.circuit.BlockTable;
import rungbook.circuit.MeterFunction;
import rungbook.circuit.Probe;
import rungbook.circuit.ReadingTable;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Past;
import rungbook.proof.cases.OpenedFuses;
import rungbook.system.Terminal;

/** Reads what {@link StatesWriter} has written. */
final class StatesReader {

  private final DataInputStream in;
  private final List<Object> rows = new ArrayList<>();

  StatesReader(DataInputStream in) {
    this.in = in;
  }

  OpenedFuses opened(int cases, int samples) throws IOException {
    int count = in.readInt();
    List<Set<String>> sets = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      sets.add(strings());
    }
    int[][] numbers = new int[cases][samples];
    for (int[] ofCase : numbers) {
      for (int sample = 0; sample < samples; sample++) {
        ofCase[sample] = in.readUnsignedShort();
      }
    }
    return new OpenedFuses(List.copyOf(sets), numbers);
  }

  /** @param into makes the tables */
  List<SolvedStates.Solved> states(SolvedStates into) throws IOException {
    int count = in.readInt();
    var states = new ArrayList<SolvedStates.Solved>();
    for (int i = 0; i < count; i++) {
      CircuitState state = state();
      ReadingTable table = into.empty(probes());
      BitSet solved = BitSet.valueOf(in.readNBytes(in.readInt()));
      for (BlockTable block : table.blocks()) {
        for (int one = solved.nextSetBit(0); one >= 0; one = solved.nextSetBit(one + 1)) {
          solved(block, one, table.probes().size());
        }
      }
      states.add(new SolvedStates.Solved(state, solved, table));
    }
    return states;
  }

  Map<CircuitState, Map<Integer, Integer>> left() throws IOException {
    var left = new HashMap<CircuitState, Map<Integer, Integer>>();
    for (int count = in.readInt(); count > 0; count--) {
      CircuitState state = state();
      Map<Integer, Integer> ways = new HashMap<>();
      for (int cases = in.readInt(); cases > 0; cases--) {
        ways.put(in.readInt(), in.readInt());
      }
      left.put(state, ways);
    }
    return left;
  }

  private void solved(BlockTable block, int caseNumber, int probes) throws IOException {
    var readings = new ArrayList<double[]>();
    for (int probe = 0; probe < probes; probe++) {
      readings.add((double[]) row(true));
    }
    block.restore(caseNumber, readings, (long[]) row(false));
  }

  private Object row(boolean isReadings) throws IOException {
    int number = in.readInt();
    if (number == rows.size()) {
      ByteBuffer bytes = ByteBuffer.wrap(in.readNBytes(in.readInt()));
      rows.add(isReadings ? readings(bytes) : seen(bytes));
    }
    return rows.get(number);
  }

  private static double[] readings(ByteBuffer bytes) {
    double[] row = new double[bytes.capacity() / Double.BYTES];
    bytes.asDoubleBuffer().get(row);
    return row;
  }

  private static long[] seen(ByteBuffer bytes) {
    long[] row = new long[bytes.capacity() / Long.BYTES];
    bytes.asLongBuffer().get(row);
    return row;
  }

  private CircuitState state() throws IOException {
    int count = in.readInt();
    CircuitState state = alone();
    past(state);
    for (int i = 1; i < count; i++) {
      CircuitState next = alone();
      state = next.with(past(state));
    }
    return state;
  }

  private Past past(CircuitState before) throws IOException {
    return new Past(before, strings(), in.readInt(), strings().stream().findFirst());
  }

  private CircuitState alone() throws IOException {
    int count = in.readInt();
    Map<String, String> positions = new HashMap<>();
    for (int i = 0; i < count; i++) {
      positions.put(in.readUTF(), in.readUTF());
    }
    return new CircuitState(positions, strings(), strings(), strings(), strings(), strings());
  }

  private List<Probe> probes() throws IOException {
    int count = in.readInt();
    var probes = new ArrayList<Probe>();
    for (int i = 0; i < count; i++) {
      probes.add(new Probe(MeterFunction.valueOf(in.readUTF()), in.readDouble(), terminal(), terminal()));
    }
    return probes;
  }

  private Terminal terminal() throws IOException {
    return new Terminal(in.readUTF(), in.readUTF());
  }

  private Set<String> strings() throws IOException {
    int count = in.readInt();
    Set<String> strings = new HashSet<>();
    for (int i = 0; i < count; i++) {
      strings.add(in.readUTF());
    }
    return strings;
  }
}
