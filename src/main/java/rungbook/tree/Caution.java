package rungbook.tree;

import rungbook.markdown.Document;

/**
 * A caution, with the parts that ANSI Z535 asks of a safety sign (from memory): signal word, hazard, consequence, and
 * how to avoid it.
 *
 * @param id the file's name without {@code .md}
 * @param hazard what hurts, and what it does to you; empty if the text does not say
 * @param avoid what to do about it; empty if the text does not say
 */
public record Caution(String id, String title, SignalWord level, String hazard, String avoid, Document document) {}
