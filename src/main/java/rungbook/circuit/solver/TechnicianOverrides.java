package rungbook.circuit.solver;

import java.util.List;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.CircuitState;
import rungbook.system.Names;
import rungbook.system.Part;

/** What a {@link CircuitState} means for the links: it holds whatever the relays do. */
public final class TechnicianOverrides {

  private final boolean[] lifted;
  private final boolean[] opened;
  private final boolean[] jumpered;

  public TechnicianOverrides(CircuitNetwork wiring, CircuitState state) {
    List<Branch> links = wiring.links();
    lifted = new boolean[links.size()];
    opened = new boolean[links.size()];
    jumpered = new boolean[links.size()];
    state.disconnected().forEach(name -> lift(wiring, name));
    for (int i = 0; i < links.size(); i++) {
      Branch link = links.get(i);
      opened[i] = state.off().contains(link.part()) || openedByPanel(wiring, link, state);
      jumpered[i] = state.bypassed().contains(link.part());
    }
  }

  private void lift(CircuitNetwork wiring, String name) {
    int at = name.lastIndexOf(" at ");
    int[] links = wiring.linksOf(name);
    if (links.length == 0 && at > 0) {
      links = wiring.node(name.substring(0, at), name.substring(at + 4)).map(wiring::wiresAt).orElse(links);
    }
    for (int link : links) {
      lifted[link] = true;
    }
  }

  private static boolean openedByPanel(CircuitNetwork wiring, Branch link, CircuitState state) {
    return link.kind() == Branch.Kind.SWITCH && wiring.system().part(link.part())
        .map(part -> (Part.Switch) part).flatMap(Part.Switch::opensWith).map(Names::key)
        .filter(panel -> isOpen(panel, state)).isPresent();
  }

  private static boolean isOpen(String panel, CircuitState state) {
    return state.open().stream().map(Names::key).anyMatch(panel::equals);
  }

  public boolean lifted(int link) {
    return lifted[link];
  }

  /** Opened by hand or by a panel. */
  public boolean opened(int link) {
    return opened[link];
  }

  public boolean jumpered(int link) {
    return jumpered[link];
  }
}
