package rungbook.tree;

import rungbook.markdown.Document;

/**
 * A caution: a hazard and its signal word.
 *
 * @param id the file's name without {@code .md}
 */
public record Caution(String id, String title, SignalWord level, Document document) {}
