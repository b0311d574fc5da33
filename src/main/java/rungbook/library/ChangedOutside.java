package rungbook.library;

import java.util.ArrayList;
import java.util.Set;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;

/** Texts that were changed in the database by something other than a save. They are never packed. */
public final class ChangedOutside {
  static final Code CHANGED_OUTSIDE = Code.of("changed-outside");

  private ChangedOutside() {}

  /** The problem of a text that does not match its hash. */
  public static Problem in(Source text) {
    return Problem.at(CHANGED_OUTSIDE, text, Span.at(0));
  }

  /** Adds the problem to each tree at the given paths, which makes it unsound. */
  public static Library mark(Library library, Set<String> paths) {
    var trees = library.trees().stream().map(tree -> paths.contains(tree.path()) ? mark(tree) : tree).toList();
    return library.with(library.text(), trees);
  }

  /** Adds the problem to a tree, which makes it unsound. */
  public static CompiledTree mark(CompiledTree tree) {
    var problems = new ArrayList<Problem>();
    problems.add(in(tree.tree().source()));
    problems.addAll(tree.problems());
    return tree.with(tree.found().showing(problems));
  }
}
