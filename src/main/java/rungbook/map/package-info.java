/**
 * A picture of a whole tree as SVG, in the manner of a ladder drawing: checks are contacts, findings are coils, tasks
 * are blocks.
 *
 * <p>{@link rungbook.map.Diagram} says what is joined to what, {@link rungbook.map.DiagramLayout} gives everything its
 * place (Eclipse Layout Kernel, layered), {@link rungbook.map.Drawing} writes the SVG. The same tree gives the same
 * bytes.
 */
package rungbook.map;
