package rungbook.proof.plan;

import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungbook.circuit.BlockTable;
import rungbook.circuit.Probe;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Past;
import rungbook.proof.cases.OpenedFuses;
import rungbook.system.Terminal;

/** Writes solved states as bytes; {@link StatesReader} reads them. Rows that are the same are written once. */
final class StatesWriter {

  private final DataOutputStream out;
  private final IdentityHashMap<Object, Integer> byIdentity = new IdentityHashMap<>();
  private final Map<ByteBuffer, Integer> byContent = new HashMap<>();

  StatesWriter(DataOutputStream out) {
    this.out = out;
  }

  void write(OpenedFuses opened) throws IOException {
    out.writeInt(opened.sets().size());
    for (Set<String> set : opened.sets()) {
      strings(set);
    }
    for (int[] ofCase : opened.numbers()) {
      for (int number : ofCase) {
        out.writeShort(number);
      }
    }
  }

  void write(List<SolvedStates.Solved> states) throws IOException {
    out.writeInt(states.size());
    for (SolvedStates.Solved one : states) {
      state(one.state());
      probes(one.table().probes());
      byte[] solved = one.solved().toByteArray();
      out.writeInt(solved.length);
      out.write(solved);
      for (BlockTable block : one.table().blocks()) {
        for (int i = one.solved().nextSetBit(0); i >= 0; i = one.solved().nextSetBit(i + 1)) {
          solved(block, i, one.table().probes().size());
        }
      }
    }
  }

  void write(Map<CircuitState, Map<Integer, Integer>> left) throws IOException {
    out.writeInt(left.size());
    for (Map.Entry<CircuitState, Map<Integer, Integer>> one : left.entrySet()) {
      state(one.getKey());
      out.writeInt(one.getValue().size());
      for (Map.Entry<Integer, Integer> way : one.getValue().entrySet()) {
        out.writeInt(way.getKey());
        out.writeInt(way.getValue());
      }
    }
  }

  private void solved(BlockTable block, int caseNumber, int probes) throws IOException {
    for (int probe = 0; probe < probes; probe++) {
      double[] row = block.readings(caseNumber, probe);
      row(row, () -> {
        ByteBuffer bytes = ByteBuffer.allocate(row.length * Double.BYTES);
        bytes.asDoubleBuffer().put(row);
        return bytes;
      });
    }
    long[] seen = block.seen(caseNumber);
    row(seen, () -> {
      ByteBuffer bytes = ByteBuffer.allocate(seen.length * Long.BYTES);
      bytes.asLongBuffer().put(seen);
      return bytes;
    });
  }

  private interface Row {
    ByteBuffer bytes();
  }

  /** The number of a row; one that is new follows its number. */
  private void row(Object row, Row content) throws IOException {
    Integer known = byIdentity.get(row);
    if (known != null) {
      out.writeInt(known);
      return;
    }
    ByteBuffer bytes = content.bytes();
    Integer same = byContent.putIfAbsent(bytes, byContent.size());
    int number = same == null ? byContent.size() - 1 : same;
    byIdentity.put(row, number);
    out.writeInt(number);
    if (same == null) {
      out.writeInt(bytes.capacity());
      out.write(bytes.array(), bytes.arrayOffset(), bytes.capacity());
    }
  }

  /** A state, after those that it comes from. */
  private void state(CircuitState state) throws IOException {
    List<CircuitState> latestFirst = state.andBefore().toList();
    out.writeInt(latestFirst.size());
    for (int i = latestFirst.size() - 1; i >= 0; i--) {
      alone(latestFirst.get(i));
      Optional<Past> past = latestFirst.get(i).past();
      strings(past.map(Past::renewed).orElse(Set.of()));
      out.writeInt(past.map(Past::waitSeconds).orElse(0));
      strings(past.flatMap(Past::repaired).stream().toList());
    }
  }

  private void alone(CircuitState state) throws IOException {
    out.writeInt(state.positions().size());
    for (Map.Entry<String, String> position : state.positions().entrySet()) {
      out.writeUTF(position.getKey());
      out.writeUTF(position.getValue());
    }
    for (Set<String> keys : List.of(state.off(), state.bypassed(), state.disconnected(), state.open(),
        state.replaced())) {
      strings(keys);
    }
  }

  private void probes(List<Probe> probes) throws IOException {
    out.writeInt(probes.size());
    for (Probe probe : probes) {
      out.writeUTF(probe.meter().name());
      out.writeDouble(probe.inputOhms());
      for (Terminal lead : List.of(probe.red(), probe.black())) {
        out.writeUTF(lead.point());
        out.writeUTF(lead.place());
      }
    }
  }

  private void strings(Collection<String> strings) throws IOException {
    out.writeInt(strings.size());
    for (String one : strings) {
      out.writeUTF(one);
    }
  }
}
