package rungbook.system;

/** A sight and when the answer to it is yes. */
public record Seen(String name, Condition when) {}
