package rungbook.store.document;

import rungbook.source.Decoding;
import rungbook.source.PictureKind;

/** Size limits of the library, in bytes unless the name says otherwise. */
public final class StoreLimits {
  public static final int TEXT = Decoding.MOST_BYTES;
  public static final int PICTURE = PictureKind.MOST_BYTES;
  public static final int FILES_COUNT = 5_000;
  /** The conflicting drafts of one document. */
  public static final int DRAFTS_COUNT = 100;
  /** A field record as it is received. */
  public static final int RECORD = 1 << 20;
  /** How many field records a list shows. */
  public static final int RECORDS_COUNT = 200;
  public static final int TOGETHER = 128 << 20;

  private StoreLimits() {}

  /** The limit for one document. */
  public static int of(DocumentPath path) {
    return path.isPicture() ? PICTURE : TEXT;
  }
}
