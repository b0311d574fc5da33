package rungbook.system.variant;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rungbook.markdown.Block;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.system.Names;

/** The text of a variant: a line of the same name takes the place of the base's, and a new one follows. */
public final class VariantDocument {

  private final Document base;
  private final VariantText variant;

  private VariantDocument(Document base, VariantText variant) {
    this.base = base;
    this.variant = variant;
  }

  public static Document of(Document base, VariantText variant) {
    return new VariantDocument(base, variant).merged();
  }

  private Document merged() {
    List<Block> blocks = new ArrayList<>(
        base.blocks().filter(block -> !VariantTexts.CHANGED.contains(block.kind())).toList());
    for (String kind : VariantTexts.CHANGED) {
      merged(kind).ifPresent(blocks::add);
    }
    return base.with(blocks);
  }

  private Optional<Block> merged(String kind) {
    List<Block> own = base.blocks(kind);
    if (own.size() == 1 && !isChanged(kind)) {
      return Optional.of(own.get(0));
    }
    Optional<Block> added = variant.blocks().stream().filter(block -> block.lines().equals(kind))
        .map(VariantBlock::block).findFirst();
    return own.stream().findFirst().or(() -> added)
        .map(block -> new Block(kind, block.kindSpan(), block.span(), entries(kind, own)));
  }

  /** An assembly changes with its parts too. */
  private boolean isChanged(String kind) {
    return variant.changes(kind) || (kind.equals("assemblies") && !taken("parts").isEmpty());
  }

  private List<Entry> entries(String kind, List<Block> own) {
    Set<String> taken = taken(kind);
    Map<String, Entry> changed = new LinkedHashMap<>();
    variant.lines(kind).forEach(entry -> changed.putIfAbsent(Names.key(entry.key()), entry));
    List<Entry> entries = new ArrayList<>();
    own.stream().flatMap(block -> block.entries().stream()).forEach(entry -> {
      Entry instead = changed.remove(Names.key(entry.key()));
      if (instead != null) {
        entries.add(instead);
      } else {
        kept(kind, entry, taken).ifPresent(entries::add);
      }
    });
    entries.addAll(changed.values());
    return entries;
  }

  private Optional<Entry> kept(String kind, Entry entry, Set<String> taken) {
    if (!taken.isEmpty() && taken.contains(Names.key(entry.key()))) {
      return Optional.empty();
    }
    return kind.equals("assemblies") ? assembly(entry) : Optional.of(entry);
  }

  /** The keys of the lines of one kind that are taken away. */
  private Set<String> taken(String kind) {
    return variant.without(kind).stream().map(item -> Names.key(item.text())).collect(Collectors.toSet());
  }

  /** An assembly without the parts that are taken away; none if it has no other. */
  private Optional<Entry> assembly(Entry entry) {
    Set<String> taken = taken("parts");
    List<Entry.Item> left = entry.items().stream().filter(item -> !taken.contains(Names.key(item.text()))).toList();
    String value = left.stream().map(Entry.Item::text).collect(Collectors.joining(", "));
    return left.isEmpty() ? Optional.empty()
        : Optional.of(left.size() == entry.items().size() ? entry
            : new Entry(entry.key(), entry.keySpan(), value, entry.valueSpan()));
  }
}
