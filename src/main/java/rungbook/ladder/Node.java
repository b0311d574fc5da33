package rungbook.ladder;

import java.util.List;

/**
 * Points that are one piece of metal.
 *
 * @param kind whether it is a rail
 * @param names of its points, {@code Y at furnace}
 * @param joints the names of the joints that make them one
 */
public record Node(Kind kind, List<String> names, List<String> joints) {

  /** What a rung meets at a node. */
  public enum Kind { LEFT_RAIL, RIGHT_RAIL, GROUND, POINT }

  public Node {
    names = List.copyOf(names);
    joints = List.copyOf(joints);
  }

  Node as(Kind other) {
    return new Node(other, names, joints);
  }
}
