package rungbook.pack.page;

/** What every page here begins and ends with. */
public final class Frame {

  /** Two rails and three rungs, in a square of 24. */
  public static final String RUNGS = "<path d=\"M5 1v22M19 1v22M5 6h5M14 6h5M5 12h14M5 18h5M14 18h5\"/>"
      + "<path d=\"M10 3v6M14 3v6\"/><circle cx=\"12\" cy=\"18\" r=\"3\"/>";

  static final String LADDER = "<svg class=\"ladder\" viewBox=\"0 0 24 24\" aria-hidden=\"true\">" + RUNGS + "</svg>";

  private static final String DAY = "M12 7a5 5 0 1 1 0 10a5 5 0 1 1 0-10M12 1v3M12 20v3M1 12h3M20 12h3"
      + "M4 4l2 2M18 18l2 2M4 20l2-2M18 6l2-2";

  private static final String NIGHT = "M20 15A9 9 0 1 1 9 4a7 7 0 0 0 11 11z";

  /** A lamp that shines down. */
  private static final String DIM = "M12 2v5M5 15a7 8 0 0 1 14 0zM9 19h6M10 22h4";

  /** A page's first bytes, up to its digest. */
  public static final String BEFORE_DIGEST = "<!doctype html>\n<html lang=\"en-US\">\n"
      + "<head><meta charset=\"utf-8\"><meta name=\"rungbook-digest\" content=\"";

  /** What the index may do beyond a pack: keep packs for use offline, and be put on a home screen. */
  public static final String INDEX_POLICY = "; worker-src 'self'; manifest-src 'self'";

  static final String BEFORE_POLICY = "<meta http-equiv=\"Content-Security-Policy\" content=\"";

  static final String SETTINGS = "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">"
      + "<meta name=\"color-scheme\" content=\"light dark\"><meta name=\"referrer\" content=\"no-referrer\">";

  static final String BEFORE_SCRIPT = "<script>";
  static final String AFTER_SCRIPT = "</script>\n</body></html>\n";

  private Frame() {}

  /**
   * Up to the body, with the place of the digest still empty.
   *
   * @param policy more of the content security policy, for a page that may ask its own server
   */
  public static void head(Html html, String title, String style, String script, String policy) {
    html.raw(BEFORE_DIGEST).raw(Digest.BLANK).raw("\">").line();
    html.raw(BEFORE_POLICY).text(policy(style, script) + policy).raw("\">").line().raw(SETTINGS).line();
    html.element("title", title).line();
    html.open("style").raw(style).close("style").close("head").line();
  }

  /** Only this style and script may run, pictures come from the page itself, and nothing is loaded. */
  static String policy(String style, String script) {
    return "default-src 'none'; img-src data:; style-src " + Digest.policySource(style) + "; script-src "
        + Digest.policySource(script)
        + "; base-uri 'none'; form-action 'none'";
  }

  /** The light is one tap away at every step, without a script too: the style looks at which of these is on. */
  public static void bar(Html html) {
    html.open("nav", "class", "bar", "aria-label", "This page").open("fieldset", "class", "light")
        .element("legend", "Light");
    light(html, "day", "Day", DAY);
    light(html, "night", "Night", NIGHT);
    light(html, "dim", "Dim red, for work in the dark", DIM);
    html.close("fieldset").close("nav").line();
  }

  public static void foot(Html html, String script) {
    html.open("footer").open("label").open("input", "type", "radio", "name", "light", "id", ":auto", "value", "auto",
        "checked", "").text("Light as the phone has it").close("label").close("footer").line();
    html.raw(BEFORE_SCRIPT).raw(script).raw(AFTER_SCRIPT);
  }

  private static void light(Html html, String name, String words, String picture) {
    html.open("label")
        .open("input", "type", "radio", "name", "light", "id", ":" + name, "value", name, "aria-label", words)
        .raw("<svg viewBox=\"0 0 24 24\" aria-hidden=\"true\"><path d=\"" + picture + "\"/></svg>")
        .close("label").line();
  }
}
