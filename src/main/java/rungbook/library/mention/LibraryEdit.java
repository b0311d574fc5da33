package rungbook.library.mention;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rungbook.library.LibraryText;
import rungbook.source.Edit;
import rungbook.source.Fix;
import rungbook.source.Source;

/**
 * A change of several files of a library at once.
 *
 * @param texts the new text of each file that changes, by its path before
 * @param move the file that gets another path, if one does
 */
public record LibraryEdit(SortedMap<String, String> texts, Optional<Move> move) {

  /** A file's path before and after. */
  public record Move(String from, String to) {}

  public LibraryEdit {
    texts = Collections.unmodifiableSortedMap(new TreeMap<>(texts));
  }

  /** Each edit in its own text. */
  static LibraryEdit of(List<Edit> edits, Optional<Move> move) {
    Map<String, List<Edit>> byPath = edits.stream().collect(Collectors.groupingBy(edit -> edit.source().name()));
    var texts = new TreeMap<String, String>();
    byPath.forEach((path, some) -> texts.put(path, Fix.apply(some.get(0).source().text(), some)));
    return new LibraryEdit(texts, move);
  }

  /** Where a file is afterward. */
  public String after(String path) {
    return move.filter(moved -> moved.from().equals(path)).map(Move::to).orElse(path);
  }

  /** The library afterward. */
  public LibraryText applied(LibraryText before) {
    var changed = new TreeMap<String, Source>();
    before.texts().forEach((path, source) -> changed.put(after(path),
        new Source(after(path), texts.getOrDefault(path, source.text()))));
    var pictures = new TreeMap<String, byte[]>();
    before.pictures().forEach((path, bytes) -> pictures.put(after(path), bytes));
    return new LibraryText(changed, pictures, before.unreadable());
  }
}
