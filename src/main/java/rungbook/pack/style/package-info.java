/** The styles and scripts of packs. */
package rungbook.pack.style;
