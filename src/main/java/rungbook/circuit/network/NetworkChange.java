package rungbook.circuit.network;

import java.util.function.Function;
import rungbook.system.Interval;

/** A change that a fault makes in the network. Branches, nodes and cores are indices. */
public sealed interface NetworkChange {

  /** An open branch. */
  record Open(int branch) implements NetworkChange {}

  /** Ohms in series with a branch. */
  record Raise(int branch, Spread ohms) implements NetworkChange {}

  /** Ohms between two nodes inside a branch's part, whether or not the branch is closed; removed with the part. */
  record Bridge(int branch, int a, int b, Spread ohms) implements NetworkChange {}

  /** A capacitor's branch whose admittance is multiplied. */
  record Derate(int branch, Spread share) implements NetworkChange {}

  /** A load's branch whose admittance for alternating current is multiplied while it is on. */
  record Overload(int branch, Spread times) implements NetworkChange {}

  /** A new branch between two nodes, siemens. */
  record Join(int a, int b, Function<Draw, Phasor> siemens) implements NetworkChange {}

  /** A transformer core whose series resistance and ratio are multiplied. */
  record Core(int index, Spread timesOhms, double timesRatio) implements NetworkChange {

    /** A core whose ratio alone is multiplied; by 1, one that does not change. */
    public static Core ofRatio(int index, double timesRatio) {
      return new Core(index, new Spread(Interval.exactly(1), ""), timesRatio);
    }
  }
}
