package rungbook.source;

import java.util.Locale;

/**
 * How much a problem matters, worst first. Errors keep a tree from becoming a pack; notes are no problem by themselves.
 */
public enum Severity {
  ERROR,
  WARNING,
  NOTE;

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
