package rungbook.rules.api;

import java.util.List;
import rungbook.source.Code;
import rungbook.source.Problems;

/** One thing that may be wrong with a tree. */
public interface Rule {

  /** What it may report. */
  List<Code> codes();

  void inspect(RuleContext context, Problems out);
}
