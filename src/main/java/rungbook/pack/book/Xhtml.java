package rungbook.pack.book;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungbook.text.Markup;

/**
 * A pack's HTML as XHTML, which a book needs: every element closed, every attribute with a value, no form fields, and
 * nothing that folds, since many readers cannot open it. The HTML comes from this program alone, so that each angle
 * bracket in it belongs to a tag.
 */
final class Xhtml {

  private static final Pattern TAG = Pattern
      .compile("<(/?)([a-zA-Z][a-zA-Z0-9]*+)((?:\\s++[^\\s=<>\"/]++(?:=\"[^\"]*+\")?+)*+)\\s*+(/?)>");
  private static final Pattern ATTRIBUTE = Pattern.compile("([^\\s=<>\"/]++)(?:=\"([^\"]*+)\")?+");

  /** An ampersand that begins none of the references that XML knows by itself. */
  private static final Pattern AMPERSAND = Pattern.compile("&(?!(?:amp|lt|gt|quot|#[0-9]+|#x[0-9a-fA-F]+);)");

  /** What is no character of XML 1.0 (section 2.2), or is discouraged there. */
  private static final Pattern NO_CHARACTER = Pattern
      .compile("[^\\t\\n\\r\\x20-\\x7E\\x85\\xA0-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]");

  /** Attributes that an element gets: a namespace of its own, and the style of what it was. */
  private static final Map<String, String> ADDED = Map.of("svg", " xmlns=\"http://www.w3.org/2000/svg\"", "summary",
      " class=\"summary\"");

  private static final Set<String> VOID = Set.of("img", "br", "hr");

  private final Links links;
  private final StringBuilder out = new StringBuilder();
  private boolean linked = true;

  private Xhtml(Links links) {
    this.links = links;
  }

  static String of(String html, Links links) {
    return new Xhtml(links).converted(html);
  }

  /** Text before it is escaped, without the characters that XML does not have. */
  static String characters(String text) {
    return NO_CHARACTER.matcher(text).replaceAll("");
  }

  private static String text(String escaped) {
    return AMPERSAND.matcher(characters(escaped)).replaceAll("&amp;");
  }

  private String converted(String html) {
    Matcher tags = TAG.matcher(html);
    int from = 0;
    while (tags.find()) {
      out.append(text(html.substring(from, tags.start())));
      tag(tags);
      from = tags.end();
    }
    return out.append(text(html.substring(from))).toString();
  }

  private void tag(MatchResult tag) {
    String name = tag.group(2);
    if (name.equals("input")) {
      out.append("☐ ");
    } else if (tag.group(1).isEmpty()) {
      open(name, tag.group(3), !tag.group(4).isEmpty() || VOID.contains(name));
    } else {
      out.append("</").append(element(name)).append('>');
    }
  }

  private void open(String name, String attributes, boolean isEmpty) {
    var kept = new StringBuilder();
    ATTRIBUTE.matcher(attributes).results().forEach(attribute -> kept.append(attribute(attribute)));
    if (name.equals("a")) {
      linked = kept.indexOf(" href=") >= 0;
    }
    out.append('<').append(element(name)).append(ADDED.getOrDefault(name, "")).append(kept)
        .append(isEmpty ? "/>" : ">");
  }

  private String element(String name) {
    return switch (name) {
      case "details" -> "div";
      case "summary" -> "p";
      case "label" -> "span";
      case "a" -> linked ? "a" : "span";
      default -> name;
    };
  }

  private String attribute(MatchResult attribute) {
    String name = attribute.group(1);
    String value = Optional.ofNullable(attribute.group(2)).orElse(name);
    if (name.startsWith("data-") || name.equals("open")) {
      return "";
    }
    return switch (name) {
      case "id" -> written(name, Anchors.of(value));
      case "href" -> links.of(Markup.unescape(value)).map(to -> written(name, Markup.escape(to))).orElse("");
      case "align" -> written("class", value);
      default -> written(name, value);
    };
  }

  private static String written(String name, String value) {
    return " " + name + "=\"" + text(value) + "\"";
  }
}
