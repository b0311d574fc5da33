/**
 * What a system text says: places, points, controls, parts and faults, as records. Knows Markdown documents, no trees
 * and no circuits.
 */
package rungbook.system;
