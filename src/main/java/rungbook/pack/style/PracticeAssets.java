package rungbook.pack.style;

/** Style and script of a practice page, which has what packs have and more. */
public final class PracticeAssets {

  public static final String STYLE = Assets.PACK_STYLE + Minified.style(Assets.read("/rungbook/practice/practice.css"));

  /** The build made it from the modules in src/main/scripts. */
  public static final String SCRIPT = Assets.read("/rungbook/pack/practice.min.js").strip();

  private PracticeAssets() {}
}
