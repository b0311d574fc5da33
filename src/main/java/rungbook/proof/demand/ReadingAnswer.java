package rungbook.proof.demand;

/** The answer to a question: the reading, and what the system does meanwhile. */
public record ReadingAnswer(ReadingQuestion question, Shown shown, Activity activity) {}
