package rungbook.tree;

import rungbook.markdown.Document;

/**
 * Something that can hurt.
 *
 * @param id the file's name without {@code .md}
 * @param level danger, warning, caution or notice, in the sense of ANSI Z535
 */
public record Caution(String id, String title, String level, Document document) {}
