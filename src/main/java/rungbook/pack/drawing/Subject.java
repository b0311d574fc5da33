package rungbook.pack.drawing;

import java.util.List;
import java.util.stream.Stream;
import rungbook.ladder.Symbol;
import rungbook.system.PartBranch;
import rungbook.system.Terminal;

/** What the leads touch, as a person finds it: a strip, a part, the ends of wires, or a terminal by itself. */
sealed interface Subject {

  /** Empty for terminals of which nothing is known but their names. */
  String title();

  List<Terminal> terminals();

  /** Those of its terminals from which it is fed. */
  List<Terminal> fed();

  /**
   * Terminals from left to right.
   *
   * @param between the symbols between neighbors, one fewer than the terminals
   */
  record Row(String title, List<Terminal> terminals, List<Symbol> between) implements Subject {

    public Row {
      terminals = List.copyOf(terminals);
      between = List.copyOf(between);
    }

    @Override
    public List<Terminal> fed() {
      return terminals.subList(0, 1);
    }

    boolean isStrip() {
      return between.stream().allMatch(Symbol.NEIGHBOR::equals) && !title.isEmpty();
    }

    /** A strip, or a can with more than two terminals. */
    boolean isEnclosed() {
      return isStrip() || (terminals.size() > 2 && !title.isEmpty());
    }
  }

  /** The two poles of a contactor, disconnect or breaker: fed at the top, four corners. */
  record Poles(String title, Symbol symbol, boolean hasCoil, PartBranch left, PartBranch right) implements Subject {

    @Override
    public List<Terminal> terminals() {
      return Stream.of(left.a(), right.a(), left.b(), right.b()).toList();
    }

    @Override
    public List<Terminal> fed() {
      return List.of(left.a(), right.a());
    }
  }

  /** The ends of a cable's conductors that are on no strip and no part: spliced wires. */
  record WireEnds(String title, List<Terminal> terminals) implements Subject {

    public WireEnds {
      terminals = List.copyOf(terminals);
    }

    @Override
    public List<Terminal> fed() {
      return terminals;
    }
  }
}
