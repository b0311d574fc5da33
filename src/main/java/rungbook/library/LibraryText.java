package rungbook.library;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import rungbook.source.Problem;
import rungbook.source.Source;

/**
 * The files of a library, before they are parsed. Paths are relative to its root, with forward slashes: {@code
 * trees/no-cooling.md}, {@code shared/systems/heat-pump.md}, {@code trees/pictures/board.svg}.
 *
 * @param texts every Markdown file that could be decoded, by path
 * @param pictures every other file, by path
 * @param unreadable the problems of files that could not be read
 */
public record LibraryText(SortedMap<String, Source> texts, SortedMap<String, byte[]> pictures,
    List<Problem> unreadable) {

  public LibraryText {
    texts = Collections.unmodifiableSortedMap(new TreeMap<>(texts));
    pictures = Collections.unmodifiableSortedMap(new TreeMap<>(pictures));
    unreadable = List.copyOf(unreadable);
  }

  /** The texts directly in a folder, by file name without {@code .md}. */
  public SortedMap<String, Source> in(String folder) {
    var found = new TreeMap<String, Source>();
    for (Map.Entry<String, Source> text : texts.entrySet()) {
      String path = text.getKey();
      if (path.startsWith(folder) && path.indexOf('/', folder.length()) < 0) {
        found.put(path.substring(folder.length(), path.length() - ".md".length()), text.getValue());
      }
    }
    return found;
  }
}
