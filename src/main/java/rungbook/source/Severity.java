package rungbook.source;

import java.util.Locale;

/** How serious a problem is, worst first. A tree with an error cannot be packed; a note alone does not fail a check. */
public enum Severity {
  ERROR,
  WARNING,
  NOTE;

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
