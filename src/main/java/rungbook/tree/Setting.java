package rungbook.tree;

import rungbook.source.Span;

/** A control at a position: {@code thermostat cooling}. Both are lookup keys. */
public record Setting(String control, String position, Span span) {

  @Override
  public String toString() {
    return control + " " + position;
  }
}
