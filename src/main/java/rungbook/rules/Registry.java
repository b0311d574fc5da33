package rungbook.rules;

import java.util.List;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Tree;

/** Every rule, in the order of the tree's life: structure, readings, paths, state, safety. */
public final class Registry {

  public static final List<Rule> RULES = List.of();

  private Registry() {}

  /** What the rules find wrong with a tree, in reading order. */
  public static List<Problem> inspect(Tree tree) {
    Subject subject = Subject.of(tree);
    Problems out = new Problems();
    RULES.forEach(rule -> rule.inspect(subject, out));
    return out.inReadingOrder();
  }
}
