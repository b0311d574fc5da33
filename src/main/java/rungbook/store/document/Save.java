package rungbook.store.document;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.regex.Pattern;

/**
 * What somebody asks to be saved. Every door to the library makes one of these, so the rules of what the library takes
 * in are checked here: an author, sizes, text that is text, a picture that is one.
 *
 * @param basedOn the number of the revision the work started from; 0 for a new document
 * @param author the author's name, one line
 * @param message why, in one line; may be empty
 */
public record Save(DocumentPath path, int basedOn, Revision.Change change, byte[] content, String author,
    String message) {

  private static final int LONGEST_AUTHOR = 100;
  private static final int LONGEST_MESSAGE = 500;
  private static final Pattern CONTROLS = Pattern.compile("\\p{Cntrl}+");

  /** @throws Refused when the library does not take it in */
  public Save {
    Objects.requireNonNull(content);
    author = author(author);
    message = oneLine(message, "the message", LONGEST_MESSAGE);
    requireSize(path, content);
    if (change == Revision.Change.WRITTEN) {
      requireKind(path, content);
    }
  }

  public static Save written(DocumentPath path, int basedOn, byte[] content, String author, String message) {
    return new Save(path, basedOn, Revision.Change.WRITTEN, content, author, message);
  }

  /** A Markdown text; pictures come as bytes. */
  public static Save text(DocumentPath path, int basedOn, String text, String author, String message) {
    if (path.isPicture()) {
      throw new Refused("`" + path + "` is the name of a picture",
          "send pictures as bytes to /api/files, and end a text's name in `.md`");
    }
    if (text == null) {
      throw new Refused("there is no text to save", "send it as `text`");
    }
    return written(path, basedOn, utf8(path, text), author, message);
  }

  public static Save removed(DocumentPath path, int basedOn, String author, String message) {
    return new Save(path, basedOn, Revision.Change.REMOVED, new byte[0], author, message);
  }

  /** An author's name as it is stored. */
  public static String author(String name) {
    var author = oneLine(name, "the author's name", LONGEST_AUTHOR);
    if (author.isEmpty()) {
      throw new Refused("a revision needs the name of its author", "say who saves, so that others can ask");
    }
    return author;
  }

  private static String oneLine(String text, String what, int longest) {
    var line = CONTROLS.matcher(text == null ? "" : text.strip()).replaceAll(" ").strip();
    if (line.length() > longest) {
      throw new Refused(what + " is longer than " + longest + " characters", "shorten it");
    }
    if (!StandardCharsets.UTF_8.newEncoder().canEncode(line)) {
      throw new Refused(what + " holds half of a character: a surrogate without its other half", "write it again");
    }
    return line;
  }

  private static byte[] utf8(DocumentPath path, String text) {
    try {
      var bytes = StandardCharsets.UTF_8.newEncoder().encode(CharBuffer.wrap(text));
      var copy = new byte[bytes.remaining()];
      bytes.get(copy);
      return copy;
    } catch (CharacterCodingException loneSurrogate) {
      throw new Refused("`" + path + "` holds half of a character: a surrogate without its other half",
          "send the text as UTF-8");
    }
  }

  private static void requireSize(DocumentPath path, byte[] content) {
    var most = StoreLimits.of(path);
    if (content.length > most) {
      throw new Refused.TooLarge("`" + path + "` is larger than " + (most >> 20) + " MB",
          path.isPicture() ? "save the picture smaller" : "split the text in two");
    }
  }

  private static void requireKind(DocumentPath path, byte[] content) {
    Signature.refusal(path, content).ifPresent(bad -> {
      throw new Refused("`" + path + "` " + bad.says(), bad.hint());
    });
    if (!path.isPicture() && !isUtf8(content)) {
      throw new Refused("`" + path + "` is not UTF-8 text", "save it as UTF-8 and send it again");
    }
  }

  private static boolean isUtf8(byte[] content) {
    try {
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(content));
      return true;
    } catch (CharacterCodingException other) {
      return false;
    }
  }
}
