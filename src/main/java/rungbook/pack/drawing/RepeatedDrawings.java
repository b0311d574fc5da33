package rungbook.pack.drawing;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Keeps what a page draws several times in the page once: a dial, a drawing of leads, a picture. Each place refers to
 * it, for which no script is needed.
 */
public final class RepeatedDrawings {

  /** Text is escaped, so that each of these is a drawing of this program or a picture of the library. */
  private static final Pattern DRAWN = Pattern.compile("<svg(?<attributes> [^>]*+)>(?<inside>.*?)</svg>"
      + "|<img src=\"(?<address>data:image/svg[^\"]*+)\" alt=\"(?<words>[^\"]*+)\" />");

  /** A drawing of leads has its class around it. */
  private static final Pattern KIND = Pattern.compile("class=\"(dial|upright)\"");

  /** A reference is about as long. */
  private static final int SHORT = 90;

  private final Map<String, Integer> counts = new HashMap<>();
  private final Map<String, String> kept = new LinkedHashMap<>();

  private RepeatedDrawings() {}

  /** @param html what is between the head of a page and its foot */
  public static String once(String html) {
    return new RepeatedDrawings().shortened(html);
  }

  private String shortened(String html) {
    DRAWN.matcher(html).results().forEach(drawn -> counts.merge(content(drawn), 1, Integer::sum));
    String page = DRAWN.matcher(html).replaceAll(drawn -> Matcher.quoteReplacement(replaced(drawn)));
    return kept.isEmpty() ? page
        : page + "<svg class=\"drawings\" width=\"0\" height=\"0\" aria-hidden=\"true\"><defs>"
            + String.join("", kept.values()) + "</defs></svg>\n";
  }

  /** The address of a picture, or the elements of a drawing. */
  private static String content(MatchResult drawn) {
    return drawn.group(3) == null ? drawn.group(2) : drawn.group(3);
  }

  private String replaced(MatchResult drawn) {
    String content = content(drawn);
    if (content.length() < SHORT || counts.getOrDefault(content, 0) < 2) {
      return drawn.group();
    }
    return drawn.group(3) == null ? drawing(drawn.group(1), content)
        : SvgSize.of(content).map(size -> picture(size, content, drawn.group(4))).orElse(drawn.group());
  }

  /** The style finds its parts by the class of what is around them, in the place where it is kept too. */
  private String drawing(String attributes, String inside) {
    String kind = KIND.matcher(attributes).results().map(known -> known.group(1)).findFirst().orElse("leads");
    String id = id(inside);
    kept.putIfAbsent(inside, "<g id=\"" + id + "\" class=\"" + kind + "\">" + inside + "</g>");
    return "<svg" + attributes + "><use href=\"#" + id + "\"/></svg>";
  }

  private String picture(SvgSize size, String address, String words) {
    String id = id(address);
    kept.putIfAbsent(address, "<image id=\"" + id + "\" width=\"" + size.width() + "\" height=\"" + size.height()
        + "\" href=\"" + address + "\"/>");
    return "<svg class=\"drawn\" role=\"img\" aria-label=\"" + words + "\" viewBox=\"0 0 " + size.width() + " "
        + size.height() + "\" width=\"" + size.width() + "\"><use href=\"#" + id + "\"/></svg>";
  }

  /** A colon keeps it apart from every step's anchor. */
  private String id(String content) {
    int known = kept.keySet().stream().toList().indexOf(content);
    return ":d" + (known < 0 ? kept.size() : known);
  }

  /** In pixels, as a picture states it. */
  private record SvgSize(int width, int height) {

    private static final Pattern STATED = Pattern
        .compile("%3Csvg (?:(?!%3E).)*?width='(\\d{1,4})' height='(\\d{1,4})'");

    static Optional<SvgSize> of(String address) {
      return STATED.matcher(address).results().findFirst()
          .map(stated -> new SvgSize(Integer.parseInt(stated.group(1)), Integer.parseInt(stated.group(2))));
    }
  }
}
