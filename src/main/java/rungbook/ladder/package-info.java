/**
 * A system's circuit as a ladder drawing: rungs between two rails, line voltage and control voltage apart.
 *
 * <p>{@link rungbook.ladder.Ladder} is the drawing as data, {@link rungbook.ladder.LadderDrawing} writes it as SVG for
 * a width. Both are pure functions: the same system gives the same bytes.
 */
package rungbook.ladder;
