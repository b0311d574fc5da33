package rungbook.pack.style;

/** Style of a pocket card, which has what packs have and more. It needs no script. */
public final class CardAssets {

  public static final String STYLE = Assets.PACK_STYLE + Minified.style(Assets.read("/rungbook/card/card.css"));

  /** The form of a page has one. */
  public static final String SCRIPT = "'use strict'";

  private CardAssets() {}
}
