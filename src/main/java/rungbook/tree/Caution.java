package rungbook.tree;

import rungbook.markdown.Document;

/**
 * Something that can hurt.
 *
 * @param id the file's name without {@code .md}
 */
public record Caution(String id, String title, SignalWord level, Document document) {}
