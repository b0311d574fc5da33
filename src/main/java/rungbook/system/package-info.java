/**
 * A system's text as records: locations, points, controls, parts and faults. This package depends on Markdown
 * documents, not on trees or circuits.
 */
package rungbook.system;
