package rungbook.store.document;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A document's path as the least discerning file system compares it: without case, and with accents in one form. An
 * export is unpacked on such systems, where documents with equal keys would overwrite each other; a library holds one
 * of them.
 */
public record NameKey(String text) {
  // the names that Windows keeps for devices, with any ending; Microsoft, "Naming Files, Paths, and Namespaces", from
  // memory
  private static final Set<
      String> DEVICES = Set.of("con", "prn", "aux", "nul", "com0", "com1", "com2", "com3", "com4", "com5", "com6",
          "com7", "com8", "com9", "lpt0", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");
  private static final Pattern SPACES = Pattern.compile(" +");

  // upper and then lower case is close to Unicode's full case folding: it also makes one of ß and SS, and of σ and ς
  public static NameKey of(DocumentPath path) {
    var composed = Normalizer.normalize(path.text(), Normalizer.Form.NFC);
    var folded = composed.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
    return new NameKey(SPACES.matcher(Normalizer.normalize(folded, Normalizer.Form.NFC)).replaceAll(" "));
  }

  /** Checks the name of a document that is not in the library yet. */
  public static NameKey ofNew(DocumentPath path) {
    for (var part : path.text().split("/", -1)) {
      if (DEVICES.contains(part.split("\\.", 2)[0].strip().toLowerCase(Locale.ROOT))) {
        throw new Refused("`" + path + "` cannot be kept on Windows: `" + part + "` is the name of a device there",
            "choose another name");
      }
      if (part.contains(" .")) {
        throw new Refused("`" + path + "` has a space before a full stop, which some file systems drop",
            "leave out the space");
      }
    }
    if (!Normalizer.isNormalized(path.text(), Normalizer.Form.NFC)) {
      throw new Refused("`" + path + "` writes an accent as a character of its own",
          "type the name again, or send it in Unicode's form NFC");
    }
    return of(path);
  }
}
