/** Rejects a text that would make a Markdown parser slow or recurse deeply, before it is parsed. */
package rungbook.markdown.preflight;
