package rungbook.web.views;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import rungbook.pack.Pack;
import rungbook.pack.Verify;
import rungbook.pack.onefile.LibraryFile;
import rungbook.pack.page.FileNames;
import rungbook.pack.signature.PublicSigningKey;

/**
 * What the server knows of a file that somebody took for a pack.
 *
 * @param good whether it is intact, and signed by the server's key if a signature was asked about
 * @param says the verdict as a sentence
 * @param facts what the pack says of itself, by name; empty if it is not intact
 */
public record PackVerdict(String file, boolean good, String says, String signature, String newest,
    Map<String, String> facts) {

  /**
   * A file, and what to hold it against.
   *
   * @param signature the file that came with it
   * @param key the server's
   */
  public record Question(String name, byte[] file, Optional<byte[]> signature, Optional<PublicSigningKey> key) {

    /**
     * @param packs those of the library as it is now
     * @param library in one file, as it is now
     */
    public PackVerdict against(List<Pack> packs, Supplier<LibraryFile> library) {
      var verdict = Verify.of(file);
      if (verdict instanceof Verify.Verdict.Intact intact) {
        return new PackVerdict(name, !isFalselySigned(), "Intact: every byte is as it was written.", signedBy(),
            intact.file().equals(FileNames.LIBRARY) ? age(intact, library.get()) : age(intact, packs), facts(intact));
      }
      var says = verdict instanceof Verify.Verdict.Altered altered ? "Altered: " + altered.flaw().says() + "."
          : "Not a pack.";
      return new PackVerdict(name, false, says, "", "", Map.of());
    }

    private boolean isFalselySigned() {
      return signature.isPresent() && key.isPresent() && !key.get().verifies(file, signature.get());
    }

    private String signedBy() {
      if (signature.isEmpty()) {
        return "Not checked: no signature was chosen. Without one, compare the digest.";
      }
      return key.map(with -> with.verifies(file, signature.get()) ? "Signed by this server's key."
          : "NOT signed by this server's key, or the signature is of another file.")
          .orElse("Not checked: this server has no key.");
    }

    private static String age(Verify.Verdict.Intact intact, LibraryFile newest) {
      return intact.digest().equals(newest.digest()) ? "It is the newest file of all trees of this library."
          : "It is NOT the newest file of all trees of this library: that has the digest " + newest.shortDigest() + ".";
    }

    private static String age(Verify.Verdict.Intact intact, List<Pack> packs) {
      if (packs.stream().anyMatch(pack -> pack.digest().equals(intact.digest()))) {
        return "It is the newest pack of this library.";
      }
      return packs.stream().filter(pack -> pack.inFolder().name().equals(intact.file())).findFirst()
          .map(pack -> "It is NOT the newest: the newest pack of this name has the digest " + pack.shortDigest() + ".")
          .orElse("This library has no pack of that name.");
    }

    private static Map<String, String> facts(Verify.Verdict.Intact intact) {
      var facts = new LinkedHashMap<String, String>();
      facts.put("Title", intact.title());
      facts.put("File", intact.file());
      facts.putAll(intact.cells());
      facts.put("Digest", intact.shortDigest());
      return facts;
    }
  }
}
