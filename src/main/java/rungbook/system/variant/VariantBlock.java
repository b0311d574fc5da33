package rungbook.system.variant;

import java.util.Optional;
import java.util.stream.Stream;
import rungbook.markdown.Block;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.markdown.Kinds;
import rungbook.system.Names;

/**
 * A block that changes a system for a variant, {@code variant no float switch} or {@code variant no float switch,
 * faults}.
 *
 * @param lines the kind of its lines: {@code parts} where it says no other
 */
public record VariantBlock(Block block, String variant, String lines) {

  /** The key of the line that takes others away. */
  public static final String WITHOUT = "without";

  public static Stream<VariantBlock> in(Document document) {
    return document.blocks().flatMap(block -> of(block).stream());
  }

  private static Optional<VariantBlock> of(Block block) {
    if (!block.kind().startsWith(Kinds.OF_VARIANT)) {
      return Optional.empty();
    }
    String[] words = block.kind().substring(Kinds.OF_VARIANT.length()).split(",", 2);
    return Optional.of(new VariantBlock(block, words[0].strip(), words.length < 2 ? "parts" : words[1].strip()));
  }

  String key() {
    return Names.key(variant);
  }

  /** The lines that add something, or change it. */
  public Stream<Entry> changes() {
    return block.entries().stream().filter(entry -> !entry.is(WITHOUT));
  }

  /** The names of the lines that are taken away. */
  Stream<Entry.Item> without() {
    return block.entries().stream().filter(entry -> entry.is(WITHOUT)).flatMap(entry -> entry.items().stream());
  }
}
