package rungbook.system;

/** A sight and when the answer to it is yes. */
public record SightCondition(String name, Condition when) {}
