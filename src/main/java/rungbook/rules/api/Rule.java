package rungbook.rules.api;

import java.util.List;
import rungbook.source.Code;
import rungbook.source.Problems;

/** Finds one kind of problem in a tree. */
public interface Rule {

  /** The codes that it can report. */
  List<Code> codes();

  void inspect(RuleContext context, Problems out);
}
