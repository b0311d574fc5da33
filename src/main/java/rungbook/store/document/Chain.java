package rungbook.store.document;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import rungbook.text.Sha256;

/** Ties the revisions of a document together with SHA-256 (FIPS 180-4). */
public final class Chain {
  private static final String FORM = "rungbook revision 1";

  private Chain() {}

  /** A SHA-256 in 64 lower-case hexadecimal digits. */
  public record Hash(String hex) {
    /** Stands before the first revision. */
    public static final Hash NONE = new Hash("0".repeat(64));
  }

  /** The hash of a revision: its own fields, its content's hash, and its parent's hash. */
  public static Hash of(DocumentPath path, int number, Revision.Change change, String author, String message,
      Instant at, Hash parent, byte[] content) {
    var fields = List.of(FORM, parent.hex(), path.text(), Integer.toString(number), change.name(),
        author, message, Long.toString(at.toEpochMilli()), Sha256.hex(content));
    return new Hash(Sha256.hex(lengthPrefixed(fields)));
  }

  /** Checks a document's revisions one after another, oldest first, so that not all of them are in memory. */
  public static final class Check {
    private Hash parent = Hash.NONE;
    private int number = 1;

    /** Whether this revision is what its hash says and follows the one before it. */
    public boolean holds(Revision revision) {
      if (revision.number() != number || !revision.parent().equals(parent) || !isIntact(revision)) {
        return false;
      }
      parent = revision.hash();
      number++;
      return true;
    }

    /** The number of the next revision, or of the one that did not hold. */
    public int number() {
      return number;
    }
  }

  static boolean isIntact(Revision revision) {
    return revision.hash().equals(of(revision));
  }

  private static Hash of(Revision r) {
    return of(r.path(), r.number(), r.change(), r.author(), r.message(), r.at(), r.parent(), r.content());
  }

  // each field is preceded by its length, so that no two lists of fields give the same bytes
  private static byte[] lengthPrefixed(List<String> fields) {
    var bytes = new ByteArrayOutputStream();
    try (var out = new DataOutputStream(bytes)) {
      for (var field : fields) {
        var utf8 = field.getBytes(StandardCharsets.UTF_8);
        out.writeInt(utf8.length);
        out.write(utf8);
      }
    } catch (IOException impossibleInMemory) {
      throw new UncheckedIOException(impossibleInMemory);
    }
    return bytes.toByteArray();
  }
}
