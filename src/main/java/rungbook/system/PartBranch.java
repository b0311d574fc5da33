package rungbook.system;

/**
 * A branch of a part, from one terminal to another: a conductor, contact or winding. Faults refer to it by its name.
 */
public record PartBranch(String name, String key, Terminal a, Terminal b) {

  public PartBranch(String name, Terminal a, Terminal b) {
    this(name, Names.key(name), a, b);
  }
}
