package rungbook.text;

/** Text in HTML and XML. */
public final class Markup {

  private Markup() {}

  /** Escapes text for use between tags or in a double-quoted attribute. */
  public static String escape(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
  }

  /** The inverse of {@link #escape}. */
  public static String unescape(String escaped) {
    return escaped.replace("&quot;", "\"").replace("&gt;", ">").replace("&lt;", "<").replace("&amp;", "&");
  }
}
