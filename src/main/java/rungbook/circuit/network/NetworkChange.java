package rungbook.circuit.network;

import java.util.function.Function;

/** A change that a fault makes in the network. Branches, nodes and cores are indices. */
public sealed interface NetworkChange {

  /** An open branch. */
  record Open(int branch) implements NetworkChange {}

  /** Ohms in series with a branch. */
  record Raise(int branch, double ohms) implements NetworkChange {}

  /** Ohms between two nodes inside a branch's part, whether or not the branch is closed; removed with the part. */
  record Bridge(int branch, int a, int b, double ohms) implements NetworkChange {}

  /** A new branch between two nodes, siemens. */
  record Join(int a, int b, Function<Draw, Phasor> siemens) implements NetworkChange {}

  /** A transformer core whose series resistance and ratio are multiplied. */
  record Core(int index, double timesOhms, double timesRatio) implements NetworkChange {}
}
