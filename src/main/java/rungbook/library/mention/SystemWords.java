package rungbook.library.mention;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.library.LibraryText;
import rungbook.library.lookup.Uses;
import rungbook.markdown.Block;
import rungbook.markdown.Document;
import rungbook.markdown.DocumentReader;
import rungbook.markdown.Entry;
import rungbook.markdown.Kinds;
import rungbook.source.Source;
import rungbook.system.Names;

/** Finds where the names that a system gives are used. */
public final class SystemWords {

  private static final List<String> KINDS = List.of("locations", "points", "controls", "parts", "sights",
      "quantities", "faults");

  /** A block of a variant says its kind behind a comma: {@code variant battery thermostat, sights}. */
  private static final String AFTER_VARIANT = ", ";

  private final String path;
  private final Map<String, SystemWord> words = new LinkedHashMap<>();

  private SystemWords(String path) {
    this.path = path;
  }

  /** Every name once, kind by kind in the order of the text. A name of two kinds is listed with the first. */
  public static List<SystemWord> of(String path, LibraryText text) {
    SystemWords words = new SystemWords(path);
    Document system = DocumentReader.read(Objects.requireNonNull(text.texts().get(path)));
    KINDS.forEach(kind -> system.blocks().filter(block -> isOf(kind, block)).flatMap(block -> block.entries().stream())
        .forEach(entry -> words.words.putIfAbsent(Names.key(entry.key()),
            new SystemWord(entry.key(), kind, new ArrayList<>()))));
    words.users(text).forEach(words::look);
    return List.copyOf(words.words.values());
  }

  /** A variant's first block is of its parts. */
  private static boolean isOf(String kind, Block block) {
    boolean isVariant = block.kind().startsWith(Kinds.OF_VARIANT);
    return isVariant ? block.kind().endsWith(AFTER_VARIANT + kind)
        || (kind.equals("parts") && !block.kind().contains(AFTER_VARIANT)) : block.kind().equals(kind);
  }

  /** The trees of the system, and what they take in. */
  private Stream<Source> users(LibraryText text) {
    List<Mention> all = Mentions.in(text);
    Set<String> users = all.stream().filter(mention -> mention.path().equals(path))
        .map(mention -> mention.source().name()).collect(Collectors.toCollection(HashSet::new));
    boolean isGrowing = true;
    while (isGrowing) {
      isGrowing = users.addAll(all.stream().filter(mention -> mention.path().startsWith(Uses.FRAGMENTS))
          .filter(mention -> users.contains(mention.source().name())).map(Mention::path).toList());
    }
    return text.texts().values().stream().filter(source -> users.contains(source.name()));
  }

  private void look(Source source) {
    DocumentReader.read(source).blocks().filter(block -> Kinds.OF_STEPS.contains(block.kind()))
        .flatMap(block -> block.entries().stream()).flatMap(entry -> entry.items().stream())
        .forEach(item -> word(item).ifPresent(word -> word.mentions().add(new Mention(source, item.span(), path))));
  }

  /** The longest name that an item is or begins with: {@code thermostat cooling} begins with a control's. */
  private Optional<SystemWord> word(Entry.Item item) {
    String key = Names.key(item.text());
    for (int end = key.length(); end > 0; end = key.lastIndexOf(' ', end - 1)) {
      SystemWord word = words.get(key.substring(0, end));
      if (word != null) {
        return Optional.of(word);
      }
    }
    return Optional.empty();
  }
}
