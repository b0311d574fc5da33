package rungbook.library.mention;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungbook.library.LibraryText;
import rungbook.library.lookup.Uses;
import rungbook.source.Edit;

/** Gives a file of a library another name, and changes every place that names it. */
public final class Renaming {

  /** What these hold is named in words, with spaces or hyphens as the author likes. */
  private static final Set<String> NAMED_IN_WORDS = Set.of(Uses.CAUTIONS, Uses.QUALIFICATIONS, Uses.METERS);

  private Renaming() {}

  /**
   * @param from a file's path
   * @param to its path afterward, in the same folder
   */
  public static LibraryEdit of(String from, String to, LibraryText text) {
    List<Edit> edits = Mentions.of(from, text).stream()
        .map(mention -> new Edit(mention.source(), mention.span(), written(mention, to))).toList();
    return LibraryEdit.of(edits, Optional.of(new LibraryEdit.Move(from, to)));
  }

  private static String written(Mention mention, String to) {
    String folder = to.substring(0, to.lastIndexOf('/') + 1);
    String name = to.substring(folder.length());
    if (!name.endsWith(".md")) {
      return pictureFolder(mention) + name;
    }
    String id = name.substring(0, name.length() - ".md".length());
    return NAMED_IN_WORDS.contains(folder) && mention.written().indexOf('-') < 0 ? id.replace('-', ' ') : id;
  }

  /** The folder that a picture's address has: {@code pictures/}. */
  private static String pictureFolder(Mention mention) {
    return mention.written().substring(0, mention.written().lastIndexOf('/') + 1);
  }
}
