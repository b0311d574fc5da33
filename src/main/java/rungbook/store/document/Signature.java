package rungbook.store.document;

import java.util.Optional;
import rungbook.source.PictureBytes;
import rungbook.source.PictureKind;
import rungbook.store.document.ImportBatch.Refusal;

/** Whether a picture's first bytes are what its name promises; a phone shows no other. */
public final class Signature {
  private Signature() {}

  /** What is wrong with a picture that is damaged or of another kind than its ending says; nothing for a text. */
  public static Optional<Refusal> refusal(DocumentPath path, byte[] content) {
    return PictureKind.of(path.text()).filter(kind -> !PictureBytes.fit(kind, content))
        .map(kind -> refusal(path, kind.words()));
  }

  private static Refusal refusal(DocumentPath path, String kind) {
    return new Refusal(path.text(), "is no " + kind + " picture: the file is damaged, or of another kind",
        "open it in a picture program, and save it again as " + kind);
  }
}
