package rungbook.proof;

import java.util.Optional;
import java.util.function.Function;
import rungbook.circuit.CircuitState;
import rungbook.system.Vocabulary;
import rungbook.system.Walks;
import rungbook.tree.Meter;
import rungbook.tree.Tree;

/** All that a walk needs beside the tree itself. */
record Course(Installations installations, Walks walks, Question question, Behind behind, Stand start,
    Function<String, Optional<Tree>> others) {

  static Course of(Installations installations, Walks walks, Vocabulary words, Meter meter,
      Function<String, Optional<Tree>> others) {
    return new Course(installations, walks, new Question(installations, words, meter),
        new Behind(installations.cases(), others),
        new Stand(CircuitState.start(words), walks.start()), others);
  }
}
