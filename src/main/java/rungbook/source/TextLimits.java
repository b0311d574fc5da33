package rungbook.source;

/**
 * Limits on the size and cost of one text. A text over a limit is rejected with a problem, so one text cannot delay the
 * others. Each limit is also a setting, see {@link LimitSettings}.
 *
 * @param lines lines that are not blank
 * @param headings headings of any level
 * @param items lines that start as a list item, and comma-separated items in fenced blocks
 * @param links opening brackets and autolinks outside of fenced blocks
 * @param tables lines between a table's head and its rows
 * @param steps steps of a tree, including those of its fragments
 * @param depth nesting of fragments
 * @param problems problems listed for one text
 */
public record TextLimits(int lines, int headings, int items, int links, int tables, int steps, int depth,
    int problems) {

  public static final TextLimits USUAL = new TextLimits(50_000, 2_000, 12_000, 12_000, 2_000, 2_000, 8, 300);

  private static final TextLimits IN_FORCE = of(LimitSettings.ofThisRun());

  /** The limits that this run of the program was started with. */
  public static TextLimits inForce() {
    return IN_FORCE;
  }

  public static TextLimits of(LimitSettings settings) {
    return new TextLimits(settings.number("lines", USUAL.lines), settings.number("headings", USUAL.headings),
        settings.number("items", USUAL.items), settings.number("links", USUAL.links),
        settings.number("tables", USUAL.tables), settings.number("steps", USUAL.steps),
        settings.number("depth", USUAL.depth), settings.number("problems", USUAL.problems));
  }
}
