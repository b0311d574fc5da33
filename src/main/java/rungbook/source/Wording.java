package rungbook.source;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The text of a problem: its severity, sentence and hint, from the front matter of the code's help page.
 *
 * @param says the sentence, with blanks such as {@code {target}}, without a final period
 * @param hint how to fix it, when there is no near name
 * @param near how to fix it, when there is a near name (the blank {@code {near}})
 * @param page the whole page's Markdown after the front matter
 */
public record Wording(Code code, Severity severity, String says, String hint, Optional<String> near, String page) {

  private static final Map<String, Wording> READ = new ConcurrentHashMap<>();
  private static final Pattern BLANK = Pattern.compile("\\{([a-z][a-z-]*)}");
  private static final String FENCE = "---\n";

  /**
   * The wording of a code.
   *
   * @throws IllegalArgumentException if it has no page
   */
  public static Wording of(Code code) {
    return find(code.name()).orElseThrow(() -> new IllegalArgumentException("no page for " + code));
  }

  public static Wording of(Problem problem) {
    return of(problem.code());
  }

  /** The wording of the code with this name; empty if there is no such code. The name may be any user input. */
  public static Optional<Wording> find(String name) {
    Wording known = READ.get(name);
    return known != null ? Optional.of(known) : load(name).map(found -> {
      READ.putIfAbsent(name, found); // names without a page are not kept: there is no end of them
      return found;
    });
  }

  public String sentence(Problem problem) {
    return fill(says, problem);
  }

  public String hint(Problem problem) {
    return fill(near.filter(text -> problem.facts().containsKey("near")).orElse(hint), problem);
  }

  private static String fill(String text, Problem problem) {
    return BLANK.matcher(text).replaceAll(blank -> Matcher.quoteReplacement(fact(blank.group(1), problem)));
  }

  private static String fact(String name, Problem problem) {
    return problem.facts().getOrDefault(name, "{" + name + "}");
  }

  private static Optional<Wording> load(String name) {
    if (!name.matches("[a-z0-9-]++")) {
      return Optional.empty();
    }
    try (InputStream in = Wording.class.getResourceAsStream("/rungbook/rules/" + name + ".md")) {
      return in == null ? Optional.empty()
          : Optional.of(read(Code.of(name), new String(in.readAllBytes(), StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String needed(Map<String, String> front, String key, Code code) {
    String value = front.get(key);
    if (value == null) {
      throw new IllegalArgumentException(code + ".md has no " + key);
    }
    return value;
  }

  /** Reads a page: front matter of {@code key: value} lines, then Markdown. */
  static Wording read(Code code, String text) {
    int end = text.indexOf("\n" + FENCE, FENCE.length());
    if (!text.startsWith(FENCE) || end < 0) {
      throw new IllegalArgumentException(code + ".md has no front matter");
    }
    var front = text.substring(FENCE.length(), end).lines()
        .map(line -> line.split(": ", 2))
        .collect(Collectors.toMap(pair -> pair[0], pair -> pair[1]));
    return new Wording(code, Severity.valueOf(needed(front, "severity", code).toUpperCase(Locale.ROOT)),
        needed(front, "says", code), needed(front, "hint", code), Optional.ofNullable(front.get("near")),
        text.substring(end + 1 + FENCE.length()));
  }
}
