package rungbook.tree;

import java.util.Map;
import java.util.Set;
import rungbook.markdown.Document;
import rungbook.system.SystemVariants;
import rungbook.system.Vocabulary;

/**
 * What the trees of a library share, keyed by the lookup key of the file name.
 *
 * @param circuits the systems with their parts and variants, for those who draw or prove
 * @param trees the ids of every tree, for links between them
 */
public record Shared(
    Map<String, Vocabulary> systems, Map<String, SystemVariants> circuits, Map<String, Meter> meters,
    Map<String, Caution> cautions, Map<String, Qualification> qualifications, Map<String, Document> fragments,
    Set<String> trees) {

  /** The default meter of a tree that names none. */
  public Meter usualMeter() {
    return meters.getOrDefault("field meter", Meter.common());
  }
}
