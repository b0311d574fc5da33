package rungbook.source;

import java.util.Locale;
import java.util.function.UnaryOperator;

/**
 * How much one text may hold and cost. Past a limit it is refused with a problem, so that no text keeps the others
 * waiting. Each limit is also a setting: the system property {@code rungbook.limit.lines}, or {@code
 * RUNGBOOK_LIMIT_LINES} in the environment.
 *
 * @param lines lines that are not blank
 * @param headings headings of any level
 * @param items lines that start as a list item, and items between commas in fenced blocks
 * @param links opening brackets and autolinks outside of fenced blocks
 * @param steps steps of a tree, with those that its fragments bring
 * @param depth fragments taken in by fragments
 * @param problems problems that are listed for one text
 */
public record TextLimits(int lines, int headings, int items, int links, int steps, int depth, int problems) {

  public static final TextLimits USUAL = new TextLimits(50_000, 2_000, 12_000, 12_000, 2_000, 8, 300);

  private static final String PREFIX = "rungbook.limit.";
  private static final TextLimits IN_FORCE = of(TextLimits::setting);

  /** The limits that this run of the program was started with. */
  public static TextLimits inForce() {
    return IN_FORCE;
  }

  /** @param settings by name; null for what is not set. What is no number above zero counts as not set. */
  public static TextLimits of(UnaryOperator<String> settings) {
    return new TextLimits(number(settings, "lines", USUAL.lines), number(settings, "headings", USUAL.headings),
        number(settings, "items", USUAL.items), number(settings, "links", USUAL.links),
        number(settings, "steps", USUAL.steps),
        number(settings, "depth", USUAL.depth), number(settings, "problems", USUAL.problems));
  }

  private static int number(UnaryOperator<String> settings, String name, int usual) {
    String written = settings.apply(PREFIX + name);
    return written != null && written.matches("[1-9][0-9]{0,8}") ? Integer.parseInt(written) : usual;
  }

  private static String setting(String name) {
    String property = System.getProperty(name);
    return property != null ? property : System.getenv(name.replace('.', '_').toUpperCase(Locale.ROOT));
  }
}
