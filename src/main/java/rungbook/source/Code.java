package rungbook.source;

/**
 * The name of a kind of problem: {@code reading-gap}. The rule or reader that reports it declares it, as a constant of
 * that name, and a page of that name words it ({@link Wording}). Two codes of one name are equal.
 */
public final class Code implements Comparable<Code> {

  private final String name;

  private Code(String name) {
    this.name = name;
  }

  /** @param name lower-case words with hyphens between */
  public static Code of(String name) {
    return new Code(name);
  }

  public String name() {
    return name;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Code code && code.name.equals(name);
  }

  @Override
  public int hashCode() {
    return name.hashCode();
  }

  @Override
  public int compareTo(Code other) {
    return name.compareTo(other.name);
  }

  @Override
  public String toString() {
    return name;
  }
}
