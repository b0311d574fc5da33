package rungbook.web.record;

import java.util.Map;
import java.util.Optional;
import rungbook.store.document.KeptRecord.KeptPack;
import rungbook.text.UrlPath;

/**
 * What this server knows of a pack that a record names.
 *
 * @param tree its id, as the record has it
 * @param path in the library; empty for an unknown pack
 * @param revision of the tree; 0 for an unknown pack
 * @param flag whether somebody should look before the record is used: the pack is unknown, or its tree was taken out;
 *     or the practice page is not that of the library
 */
public record PackMatch(String tree, String digest, String saidRevision, String path, int revision, String says,
    boolean flag) {

  /** @param revisions the newest of each document that is in the library, by path */
  static PackMatch of(KeptPack pack, Map<String, Integer> revisions) {
    if (pack.issued().isEmpty()) {
      return new PackMatch(pack.tree(), pack.digest(), pack.saidRevision(), "", 0,
          "unknown: this server never handed out a pack with this digest", true);
    }
    var issued = pack.issued().get();
    var newest = revisions.get(issued.path().text());
    return new PackMatch(pack.tree(), pack.digest(), pack.saidRevision(), issued.path().text(), issued.revision(),
        newest == null ? "withdrawn: its tree is no longer in the library"
            : newest > issued.revision() ? "older: the library has revision " + newest : "the newest revision",
        newest == null);
  }

  /**
   * The page that was practiced on; its system is in place of the tree.
   *
   * @param digest of the page that the library has of the system; empty if there is none
   */
  public static PackMatch of(PracticeResults results, Optional<String> digest, Map<String, Integer> revisions) {
    var path = "shared/systems/" + results.system() + ".md";
    var newest = revisions.get(path);
    boolean isSame = digest.filter(whole -> whole.startsWith(results.digest())).isPresent();
    return new PackMatch(results.system(), results.digest(), "", newest == null ? "" : path,
        newest == null ? 0 : newest,
        isSame ? "the practice page of this library"
            : digest.isEmpty() ? "unknown: this library has no practice page of this system"
                : "of another edition: the page of this library has another circuit, other trees or another program",
        !isSame);
  }

  /** Where the text of that revision is; empty for an unknown pack. */
  public String href() {
    return path.isEmpty() ? "" : "/history/" + UrlPath.of(path);
  }
}
