package rungbook.ladder;

/**
 * Something on a rung: a limb of a part.
 *
 * @param part the key of its part
 * @param note when a contact is closed, in words; empty for anything else
 * @param isLoad whether it takes power: a load, or a transformer's primary
 */
public record Element(String name, String part, Symbol symbol, String note, boolean isLoad) {}
