package rungbook.store;

import java.util.Objects;

/**
 * What somebody asks to be saved.
 *
 * @param basedOn the number of the revision the work started from; 0 for a new document
 * @param author who saves, as they call themselves
 * @param message why, in one sentence; may be empty
 */
public record Save(DocumentPath path, int basedOn, Revision.Change change, byte[] content, String author, String message) {
  public Save {
    Objects.requireNonNull(content);
    author = author.strip();
    message = message.strip();
    if (author.isEmpty()) {
      throw new Refused("a revision needs the name of its author", "say who saves, so that others can ask");
    }
  }

  public static Save written(DocumentPath path, int basedOn, byte[] content, String author, String message) {
    return new Save(path, basedOn, Revision.Change.WRITTEN, content, author, message);
  }

  public static Save removed(DocumentPath path, int basedOn, String author, String message) {
    return new Save(path, basedOn, Revision.Change.REMOVED, new byte[0], author, message);
  }
}
