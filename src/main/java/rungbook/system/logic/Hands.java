package rungbook.system.logic;

import java.util.BitSet;

/** What hands have done to each limb of a network, whatever its contacts do. */
final class Hands {

  private final BitSet bypassed = new BitSet();
  private final BitSet takenOff = new BitSet();
  private final BitSet opened = new BitSet();

  Hands(ContactNetwork network, ControlState state) {
    state.bypassed().forEach(part -> bypassed.or(network.ofPart(part)));
    state.disconnected().forEach(name -> {
      takenOff.or(network.named(name));
      takenOff.or(network.wiresAt(name));
    });
    opened.or(takenOff);
    state.off().forEach(part -> opened.or(network.ofPart(part)));
    state.open().forEach(panel -> opened.or(network.openedBy(panel)));
  }

  /** @param closed whether the contact that the conductor may be is closed */
  boolean conducts(ContactNetwork.Limb conductor, boolean closed) {
    return bypassed.get(conductor.number()) || (closed && !opened.get(conductor.number()));
  }

  boolean isConnected(ContactNetwork.Source source) {
    return isConnected(source.limb()) && (source.primary() == null || isConnected(source.primary()));
  }

  boolean isConnected(ContactNetwork.Limb limb) {
    return !takenOff.get(limb.number());
  }
}
