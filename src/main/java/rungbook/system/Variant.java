package rungbook.system;

/**
 * A form in which a system is in the field: its base with one change.
 *
 * @param share of the installations, from 0 to 1
 * @param about what is different, in words; may be empty
 * @param system the whole of it, changes included
 */
public record Variant(String name, double share, String about, ControlSystem system) {

  public String key() {
    return Names.key(name);
  }
}
