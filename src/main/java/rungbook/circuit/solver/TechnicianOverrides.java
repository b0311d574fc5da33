package rungbook.circuit.solver;

import java.util.List;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.CircuitState;
import rungbook.system.Names;
import rungbook.system.Part;

/** What a {@link CircuitState} does to each branch, whatever state the relays are in. */
public final class TechnicianOverrides {

  private final boolean[] disconnected;
  private final boolean[] opened;
  private final boolean[] jumpered;

  public TechnicianOverrides(CircuitNetwork network, CircuitState state) {
    List<Branch> branches = network.branches();
    disconnected = new boolean[branches.size()];
    opened = new boolean[branches.size()];
    jumpered = new boolean[branches.size()];
    state.disconnected().forEach(name -> disconnect(network, name));
    for (int i = 0; i < branches.size(); i++) {
      Branch branch = branches.get(i);
      opened[i] = state.off().contains(branch.part()) || openedByPanel(network, branch, state);
      jumpered[i] = state.bypassed().contains(branch.part());
    }
  }

  private void disconnect(CircuitNetwork network, String name) {
    int at = name.lastIndexOf(" at ");
    int[] branches = network.branchesOf(name);
    if (branches.length == 0 && at > 0) {
      branches = network.node(name.substring(0, at), name.substring(at + 4)).map(network::wiresAt).orElse(branches);
    }
    for (int branch : branches) {
      disconnected[branch] = true;
    }
  }

  private static boolean openedByPanel(CircuitNetwork network, Branch branch, CircuitState state) {
    return !state.open().isEmpty() && branch.kind() == Branch.Kind.SWITCH && network.system().part(branch.part())
        .map(part -> (Part.Switch) part).flatMap(Part.Switch::opensWith).map(Names::key)
        .filter(panel -> isOpen(panel, state)).isPresent();
  }

  private static boolean isOpen(String panel, CircuitState state) {
    return state.open().stream().map(Names::key).anyMatch(panel::equals);
  }

  /** Whether a branch is disconnected. */
  public boolean disconnected(int branch) {
    return disconnected[branch];
  }

  /** Whether a branch is opened by hand or by a panel. */
  public boolean opened(int branch) {
    return opened[branch];
  }

  /** Whether a branch has a jumper across it. */
  public boolean jumpered(int branch) {
    return jumpered[branch];
  }
}
