/** Where the meter's leads go, drawn from a system's strips and parts as inline SVG. */
package rungbook.pack.drawing;
