package rungbook.system;

/**
 * A way for current from one terminal to another: a conductor, a contact, a winding; named so that a fault can name
 * it.
 */
public record PartBranch(String name, Terminal a, Terminal b) {

  public String key() {
    return Names.key(name);
  }
}
