package rungbook.tree.reader;

import java.util.ArrayList;
import java.util.List;
import rungbook.markdown.Block;
import rungbook.markdown.Document;
import rungbook.markdown.Kinds;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;

/** What a fragment needs before a tree can include it: a title, a first step, and an exit. */
public final class Fragments {

  static final Code FRAGMENT_WITHOUT_STEP = Code.of("fragment-without-step");
  static final Code FRAGMENT_WITHOUT_EXIT = Code.of("fragment-without-exit");

  private Fragments() {}

  /** The problems of a fragment's text, whether or not a tree includes it. */
  public static List<Problem> inspect(Document fragment) {
    var problems = new ArrayList<>(fragment.problems());
    if (fragment.unread().isEmpty() && fragment.front("title").isEmpty()) {
      problems.add(StepKeys.missing("title", "the front matter", fragment.source(), fragment.frontSpan()));
    }
    problems.addAll(lacks(fragment, fragment.source(), fragment.frontSpan(), name(fragment)));
    return problems;
  }

  /** Why a fragment cannot be included, reported at the given place. Empty for a text that could not be read at all. */
  static List<Problem> lacks(Document fragment, Source source, Span span, String name) {
    if (!has(fragment, false)) {
      return List.of(Problem.at(FRAGMENT_WITHOUT_STEP, source, span).with("fragment", name));
    }
    return has(fragment, true) ? List.of()
        : List.of(Problem.at(FRAGMENT_WITHOUT_EXIT, source, span).with("fragment", name));
  }

  private static boolean has(Document fragment, boolean exit) {
    return fragment.sections().stream().flatMap(section -> section.blocks().stream()).map(Block::kind)
        .anyMatch(kind -> Kinds.OF_STEPS.contains(kind) && kind.equals("exit") == exit);
  }

  private static String name(Document fragment) {
    String path = fragment.source().name();
    String file = path.substring(path.lastIndexOf('/') + 1);
    return file.endsWith(".md") ? file.substring(0, file.length() - ".md".length()) : file;
  }
}
