package rungbook.text;

/** Text in HTML and XML. */
public final class Markup {

  private Markup() {}

  /** Text as it is written between tags or in a double-quoted attribute. */
  public static String escape(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
  }

  /** The text that {@link #escape} was given. */
  public static String unescape(String escaped) {
    return escaped.replace("&quot;", "\"").replace("&gt;", ">").replace("&lt;", "<").replace("&amp;", "&");
  }
}
