package rungbook.pack.card;

import rungbook.proof.demand.ExpectedReadings;
import rungbook.system.ControlSystem;

/**
 * What a pocket card is made of.
 *
 * @param id of the system, the file's name without {@code .md}
 * @param system one that was read without problems
 */
public record CardInput(String id, ControlSystem system, ExpectedReadings expected) {}
