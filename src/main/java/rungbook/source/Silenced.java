package rungbook.source;

/** A problem that is not shown, and the line that silences it. */
public record Silenced(Problem problem, Quiet quiet) {}
