/**
 * A picture of a whole tree as SVG, in the style of a ladder diagram: checks are contacts, findings are coils, tasks
 * are blocks, ends are on the rail.
 *
 * <p>{@link rungbook.map.Diagram} is the graph, {@link rungbook.map.DiagramLayout} computes positions (Eclipse Layout
 * Kernel, layered), {@link rungbook.map.Drawing} writes the SVG. The same tree gives the same bytes.
 */
package rungbook.map;
