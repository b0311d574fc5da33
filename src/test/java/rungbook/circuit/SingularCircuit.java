package rungbook.circuit;

/** A circuit with no answer: a loop of ideal sources, or a source into nothing. */
public final class SingularCircuit extends RuntimeException {

  private static final long serialVersionUID = 1;

  SingularCircuit(String why) {
    super(why);
  }
}
