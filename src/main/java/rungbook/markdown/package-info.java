/**
 * Markdown to a parsed document: front matter, sections, the fenced block of each step and its ways on, all with spans.
 * The only room that knows Flexmark and YAML.
 */
package rungbook.markdown;
