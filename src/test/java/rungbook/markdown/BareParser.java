package rungbook.markdown;

import com.vladsch.flexmark.parser.Parser;

/** The library's own parser with the same extensions: the floor that the cost of a check is measured against. */
public final class BareParser {

  private static final Parser PARSER = Parser.builder(Flexmark.OPTIONS).build();

  private BareParser() {}

  /** Parses and throws the result away; returns the length of the text. */
  public static int parse(String text) {
    return PARSER.parse(text).getTextLength();
  }
}
