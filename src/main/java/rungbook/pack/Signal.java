package rungbook.pack;

import java.util.Arrays;
import java.util.Locale;

/**
 * A caution's level, in the sense of ANSI Z535: its word, and a shape that the style draws, so that it is told apart without
 * colour: octagon, triangle, diamond, square, after road signs (this project's own choice).
 */
enum Signal {
  DANGER, WARNING, CAUTION, NOTICE;

  /** A level that cannot be read is taken as a warning: too much care does no harm. */
  static Signal of(String level) {
    return Arrays.stream(values()).filter(signal -> signal.word().equals(level)).findFirst().orElse(WARNING);
  }

  private String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The class that the style knows it by; {@code caution} is the box around any of them. */
  String style() {
    return this == CAUTION ? "care" : word();
  }
}
