package rungbook.markdown;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.vladsch.flexmark.util.ast.Document;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rungbook.source.Source;

/**
 * The examples of the CommonMark specification. Prose renders as they say, but for one thing that is this project's
 * own: HTML is shown as text. Flexmark follows version 0.28; what it does otherwise than 0.30 is named here, and none
 * of it is in the step constructs of a tree.
 */
class CommonMarkSpecTest {

  private static final Pattern EXAMPLE = Pattern.compile("^`{32} example\n(.*?)^\\.\n(.*?)^`{32}$",
      Pattern.MULTILINE | Pattern.DOTALL);
  private static final Pattern TAG = Pattern.compile("</?([a-z][a-z0-9]*)");
  private static final Set<String> OF_MARKDOWN = Set.of(
      "a", "blockquote", "br", "code", "em", "h1", "h2", "h3", "h4", "h5", "h6", "hr", "img", "li", "ol", "p", "pre",
      "strong", "ul");

  /**
   * Numeric entities out of range, spaces in code spans, info strings with backticks, list items indented by three, and
   * the like.
   */
  private static final Set<Integer> OTHERWISE_THAN_030 = Set.of(
      28, 138, 146, 201, 215, 216, 312, 313, 331, 332, 334, 335, 336, 337, 415, 416, 488, 492, 539, 640);

  private static final Prose.Targets ALL = new Prose.Targets() {
    @Override
    public Optional<String> picture(String target) {
      return Optional.of(target);
    }

    @Override
    public Optional<String> link(String target) {
      return Optional.of(target);
    }
  };

  record Example(int number, String markdown, String html) {}

  @Test
  void proseRendersAsVersion028Says() throws IOException {
    assertEquals(Set.of(), different("0.28"));
  }

  @Test
  void differencesFromVersion030AreTheKnownOnes() throws IOException {
    assertEquals(OTHERWISE_THAN_030, different("0.30"));
  }

  @Test
  void htmlIsShownAsText() throws IOException {
    List<Example> withHtml = examples("0.28").stream().filter(CommonMarkSpecTest::hasHtml).toList();
    assertTrue(withHtml.size() > 50, "only " + withHtml.size() + " examples hold HTML");
    Set<String> tags = withHtml.stream().flatMap(example -> TAG.matcher(render(example)).results())
        .map(tag -> tag.group(1))
        .collect(Collectors.toSet());
    assertTrue(OF_MARKDOWN.containsAll(tags), () -> "live tags: " + tags);
  }

  /** The numbers of the examples without HTML that render otherwise than the specification says. */
  private static Set<Integer> different(String version) throws IOException {
    List<Example> plain = examples(version).stream().filter(example -> !hasHtml(example)).toList();
    assertTrue(plain.size() > 550, "only " + plain.size() + " examples compared");
    return plain.stream().filter(example -> !example.html().equals(render(example))).map(Example::number)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static boolean hasHtml(Example example) {
    Inlines found = Inlines.of(Flexmark.parse(example.markdown()), new Source("example", example.markdown()), 0);
    return found.problems().stream().anyMatch(problem -> problem.code().name().equals("html-shown-as-text"));
  }

  private static String render(Example example) {
    Document root = Flexmark.parse(example.markdown());
    root.set(SafeNodes.TARGETS, ALL);
    return Prose.html(root);
  }

  private static List<Example> examples(String version) throws IOException {
    String spec;
    try (var in = CommonMarkSpecTest.class.getResourceAsStream("/spec." + version + ".txt")) {
      spec = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    var found = new ArrayList<Example>();
    EXAMPLE.matcher(spec.replace("\r\n", "\n")).results().forEach(match -> found.add(
        new Example(found.size() + 1, match.group(1).replace('→', '\t'), match.group(2).replace('→', '\t'))));
    return found;
  }
}
