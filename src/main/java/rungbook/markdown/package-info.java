/**
 * Parses Markdown to a document: front matter, sections, each step's fenced block and ways on, all with spans. The only
 * package that uses Flexmark and the YAML parser.
 */
package rungbook.markdown;
