package rungbook.system.logic;

import java.util.Map;
import java.util.Set;

/**
 * What hands have done to a system. All names are lookup keys.
 *
 * @param positions the position of each selector
 * @param off isolated power sources
 * @param bypassed interlocks with a jumper across them
 * @param disconnected disconnected parts, conductors, assemblies or terminals ({@code y at furnace})
 * @param open open panels
 */
public record ControlState(
    Map<String, String> positions, Set<String> off, Set<String> bypassed, Set<String> disconnected,
    Set<String> open) {

  public ControlState {
    positions = Map.copyOf(positions);
    off = Set.copyOf(off);
    bypassed = Set.copyOf(bypassed);
    disconnected = Set.copyOf(disconnected);
    open = Set.copyOf(open);
  }
}
