package rungbook.system.sight;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungbook.markdown.Entry;

/**
 * What a fault's line shows or hides, taken apart: {@code show status light 3 flashes when limit open}.
 *
 * @param isShown and not hidden
 * @param what the words between
 */
public record Showing(boolean isShown, String what, Optional<Entry.Item> when) {

  private static final Pattern FORM = Pattern.compile("(show|hide) (.+?)(?: when (.+))?", Pattern.DOTALL);

  /** Empty for what is no such item. */
  public static Optional<Showing> of(Entry.Item item) {
    boolean mayBe = item.text().startsWith("show ") || item.text().startsWith("hide ");
    Matcher form = FORM.matcher(item.text());
    return mayBe && form.matches() ? Optional.of(new Showing(form.group(1).equals("show"), form.group(2),
        Optional.ofNullable(form.group(3)).map(when -> new Entry.Item(when.strip(), item.span())))) : Optional.empty();
  }
}
