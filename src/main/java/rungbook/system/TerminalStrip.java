package rungbook.system;

import java.util.List;

/**
 * Terminals that are together in one row, as a person finds them behind the panel.
 *
 * @param terminals from left to right; all at one place
 */
public record TerminalStrip(String name, List<Terminal> terminals) {

  public TerminalStrip {
    terminals = List.copyOf(terminals);
  }
}
