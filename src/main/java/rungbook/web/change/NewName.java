package rungbook.web.change;

import java.util.Set;
import rungbook.markdown.Slug;
import rungbook.store.Store;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.NameKey;
import rungbook.store.document.Revision;
import rungbook.system.Names;
import rungbook.web.http.ProblemException;

/** What a file is to be called. */
public final class NewName {

  /** The library finds these by their names. */
  private static final Set<DocumentPath> FIXED = Set.of(DocumentPath.COMPANY, DocumentPath.WORDS);

  private static final int LONGEST = 80;

  private NewName() {}

  public static boolean isFixed(DocumentPath path) {
    return FIXED.contains(path);
  }

  /** A file's own name without its ending. */
  public static String without(DocumentPath path) {
    return path.name().substring(0, path.name().lastIndexOf('.'));
  }

  /**
   * The path in the same folder that a new name makes.
   *
   * @param name as somebody typed it: {@code No heat, blower runs}
   */
  public static DocumentPath of(DocumentPath from, String name, Store store) {
    if (isFixed(from)) {
      throw ProblemException.badRequest("`" + from + "` has the only name it can have", "leave it as it is");
    }
    var slug = Slug.of(name.strip());
    if (slug.isBlank()) {
      throw ProblemException.badRequest("the new name has no letter and no digit", "write a name such as `no-heat`");
    }
    var folder = from.text().substring(0, from.text().length() - from.name().length());
    var ending = from.name().substring(from.name().lastIndexOf('.'));
    var to = new DocumentPath(folder + slug.substring(0, Math.min(slug.length(), LONGEST)) + ending);
    requireFree(from, to, store);
    return to;
  }

  private static void requireFree(DocumentPath from, DocumentPath to, Store store) {
    if (NameKey.of(from).equals(NameKey.of(to)) || Names.key(from.text()).equals(Names.key(to.text()))) {
      throw ProblemException.badRequest("`" + to + "` is the name it has", "choose another name");
    }
    if (store.head(to).filter(Revision::isThere).isPresent()) {
      throw ProblemException.of(409, "There is such a file already", "`" + to + "` is in the library",
          "choose another name");
    }
  }
}
