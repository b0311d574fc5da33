package rungbook.report;

import rungbook.source.Severity;

/** How text is emphasized on a terminal. Color never carries information that the text lacks. */
public enum Style {
  PLAIN,
  COLOR;

  private static final String RESET = "\u001B[0m";

  String strong(String text) {
    return dressed("1", text);
  }

  String faint(String text) {
    return dressed("2", text);
  }

  String severity(Severity severity, String text) {
    return dressed(switch (severity) {
      case ERROR -> "1;31";
      case WARNING -> "1;33";
      case NOTE -> "1;36";
    }, text);
  }

  private String dressed(String code, String text) {
    return this == PLAIN ? text : "\u001B[" + code + "m" + text + RESET;
  }
}
