package rungbook.store.document;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import rungbook.source.PictureKind;

/**
 * A document's path in the library, such as {@code trees/no-cooling.md} or {@code shared/cautions/moving-blower.md}. It
 * cannot leave the library: no {@code ..}, no hidden file, nothing that a file system or a URL reads differently.
 */
public record DocumentPath(String text) implements Comparable<DocumentPath> {
  public static final int LONGEST = 200;
  private static final Set<String> OUTSIDE_FOLDERS = Set.of("company.md", "shared/words.md");
  private static final Set<String> SHARED = Set.of("cautions", "qualifications", "meters", "systems", "fragments");
  private static final Pattern SEGMENT = Pattern.compile("[\\p{L}\\p{M}\\p{N}_(][\\p{L}\\p{M}\\p{N} _.,()'+-]*");
  /** Whose library it is: the one text outside the folders. */
  public static final DocumentPath COMPANY = new DocumentPath("company.md");

  /** The words that the library avoids: the one shared text outside the folders. */
  public static final DocumentPath WORDS = new DocumentPath("shared/words.md");

  /** @throws Refused when the text names no place in a library */
  public DocumentPath {
    var segments = List.of(text.split("/", -1));
    if (text.length() > LONGEST) {
      throw new Refused("`" + text + "` is longer than " + LONGEST + " characters", "shorten the name");
    }
    for (var segment : segments) {
      requireSegment(text, segment);
    }
    requireRoom(text, segments);
    requireKind(text);
  }

  private static void requireSegment(String text, String segment) {
    if (!SEGMENT.matcher(segment).matches() || segment.endsWith(".") || segment.endsWith(" ")) {
      throw new Refused("`" + text + "` has a part that is not a plain name: `" + segment + "`",
          "use letters, digits, spaces, hyphens and full stops, and start with a letter or digit");
    }
  }

  private static void requireRoom(String text, List<String> segments) {
    var inTrees = segments.get(0).equals("trees") && segments.size() >= 2;
    var inShared = segments.get(0).equals("shared") && segments.size() >= 3 && SHARED.contains(segments.get(1));
    if (!inTrees && !inShared && !OUTSIDE_FOLDERS.contains(text)) {
      throw new Refused("`" + text + "` is in no folder of the library",
          "put it in `trees/`, `shared/cautions/`, `shared/qualifications/`, `shared/meters/`, `shared/systems/` or "
              + "`shared/fragments/`");
    }
  }

  private static void requireKind(String text) {
    if (!text.toLowerCase(Locale.ROOT).endsWith(".md") && PictureKind.of(text).isEmpty()) {
      throw new Refused("`" + text + "` is neither a Markdown file nor a picture",
          "a text ends in `.md`, a picture in " + PictureKind.endingsInWords());
    }
  }

  public boolean isPicture() {
    return PictureKind.of(text).isPresent();
  }

  public boolean isTree() {
    return text.startsWith("trees/") && !isPicture();
  }

  /** The file's own name, without its folder. */
  public String name() {
    return text.substring(text.lastIndexOf('/') + 1);
  }

  @Override
  public int compareTo(DocumentPath other) {
    return text.compareTo(other.text);
  }

  @Override
  public String toString() {
    return text;
  }
}
