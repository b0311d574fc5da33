package rungbook.library.mention;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rungbook.library.LibraryText;
import rungbook.library.PictureLinks;
import rungbook.library.lookup.TreeLink;
import rungbook.library.lookup.Uses;
import rungbook.markdown.Block;
import rungbook.markdown.Document;
import rungbook.markdown.DocumentReader;
import rungbook.markdown.Entry;
import rungbook.markdown.Kinds;
import rungbook.markdown.Picture;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.system.Names;

/** Finds every place where a text of a library names one of its files. */
public final class Mentions {

  /** The folder of what a line names. */
  private static final Map<String, String> FOLDERS = Map.of("system", Uses.SYSTEMS, "meter", Uses.METERS, "cautions",
      Uses.CAUTIONS, "who", Uses.QUALIFICATIONS, "fragment", Uses.FRAGMENTS);

  private static final Set<String> IN_FRONT_MATTER = Set.of("system", "meter");

  private final LibraryText text;

  /** A file's path by its folder and the lookup key of its name. */
  private final Map<String, String> paths = new HashMap<>();

  private Mentions(LibraryText text) {
    this.text = text;
    for (String folder : FOLDERS.values()) {
      text.in(folder).forEach((id, source) -> paths.put(folder + Names.key(id), source.name()));
    }
  }

  /** All of them, text by text in the order of the paths, and in the order of each text. */
  public static List<Mention> in(LibraryText text) {
    Mentions mentions = new Mentions(text);
    return text.texts().values().stream().flatMap(mentions::of).toList();
  }

  /** Those of one file. */
  public static List<Mention> of(String path, LibraryText text) {
    return in(text).stream().filter(mention -> mention.path().equals(path)).toList();
  }

  private Stream<Mention> of(Source source) {
    Document document = DocumentReader.read(source);
    Stream<Mention> named = Stream.concat(
        document.front().stream().filter(entry -> IN_FRONT_MATTER.stream().anyMatch(entry::is)),
        document.blocks().filter(block -> Kinds.OF_STEPS.contains(block.kind())).map(Block::entries)
            .flatMap(List::stream))
        .flatMap(entry -> named(source, entry));
    Stream<Mention> pictures = document.pictures().stream().flatMap(picture -> shown(source, picture).stream());
    return Stream.of(named, pictures, linked(source)).flatMap(found -> found)
        .sorted((one, other) -> one.span().compareTo(other.span()));
  }

  private Stream<Mention> named(Source source, Entry entry) {
    Optional<String> folder = FOLDERS.entrySet().stream().filter(known -> entry.is(known.getKey()))
        .map(Map.Entry::getValue).findFirst();
    return folder.stream().flatMap(within -> entry.items().stream()
        .flatMap(item -> Optional.ofNullable(paths.get(within + Names.key(item.text())))
            .flatMap(path -> literal(source, item.span(), item.text()).map(span -> new Mention(source, span, path)))
            .stream()));
  }

  private Optional<Mention> shown(Source source, Picture picture) {
    return PictureLinks.path(source.name(), picture.target()).filter(path -> text.pictures().containsKey(path))
        .flatMap(path -> literal(source, picture.span(), picture.target())
            .map(span -> new Mention(source, span, path)));
  }

  private Stream<Mention> linked(Source source) {
    return TreeLink.in(source.text()).stream()
        .map(link -> new Mention(source, link.span(), Uses.TREES + source.text(link.span()) + ".md"))
        .filter(mention -> text.texts().containsKey(mention.path()));
  }

  /** Where the words are literally within a span, which may have quotes or more around them. */
  private static Optional<Span> literal(Source source, Span within, String words) {
    int at = source.text(within).lastIndexOf(words);
    return at < 0 || words.isEmpty() ? Optional.empty() : Optional.of(within.part(at, words.length()));
  }
}
