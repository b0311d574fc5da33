package rungbook.system.logic;

import org.jspecify.annotations.Nullable;
import rungbook.system.Names;
import rungbook.system.Part;

/** What hands have done to each limb of a network, whatever its contacts do. */
final class Hands {

  private enum Path { OPEN, CLOSED, AS_THE_CONTACT }

  private final Path[] conductors;
  private final boolean[] sources;
  private final boolean[] loads;

  Hands(ContactNetwork network, ControlState state) {
    this.conductors = new Path[network.conductors().size()];
    for (int i = 0; i < conductors.length; i++) {
      conductors[i] = path(network.conductors().get(i), network, state);
    }
    this.sources = new boolean[network.sources().size()];
    for (int i = 0; i < sources.length; i++) {
      sources[i] = isConnected(network.sources().get(i).limb(), network, state)
          && isConnected(network.sources().get(i).primary(), network, state);
    }
    this.loads = new boolean[network.loads().size()];
    for (int i = 0; i < loads.length; i++) {
      loads[i] = true;
      for (ContactNetwork.Limb limb : network.loads().get(i)) {
        loads[i] &= isConnected(limb, network, state);
      }
    }
  }

  /** @param closed whether the contact that the conductor may be is closed */
  boolean conducts(int conductor, boolean closed) {
    return conductors[conductor] == Path.CLOSED || (closed && conductors[conductor] == Path.AS_THE_CONTACT);
  }

  boolean isSourceConnected(int source) {
    return sources[source];
  }

  boolean isLoadConnected(int load) {
    return loads[load];
  }

  private static boolean isConnected(ContactNetwork.@Nullable Limb limb, ContactNetwork network, ControlState state) {
    return limb == null || !network.isTakenOff(limb, state);
  }

  private static Path path(ContactNetwork.Limb limb, ContactNetwork network, ControlState state) {
    String part = limb.part().key();
    if (state.bypassed().contains(part)) {
      return Path.CLOSED;
    }
    boolean opened = state.off().contains(part) || isOpenedByPanel(limb.part(), state);
    return opened || network.isTakenOff(limb, state) ? Path.OPEN : Path.AS_THE_CONTACT;
  }

  private static boolean isOpenedByPanel(Part part, ControlState state) {
    return part instanceof Part.Switch contact && contact.opensWith().isPresent()
        && state.open().contains(Names.key(contact.opensWith().get()));
  }
}
