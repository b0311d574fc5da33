package rungbook.library.mention;

import java.util.List;

/**
 * A name that a system's text gives, and where trees of the system and the fragments that they take use it.
 *
 * @param kind the block that gives it: {@code parts}
 */
public record SystemWord(String name, String kind, List<Mention> mentions) {}
