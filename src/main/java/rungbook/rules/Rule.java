package rungbook.rules;

import rungbook.source.Problems;

/** One thing that may be wrong with a tree. */
@FunctionalInterface
public interface Rule {

  void inspect(Subject subject, Problems out);
}
