package rungbook.library;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rungbook.markdown.Document;
import rungbook.markdown.Picture;
import rungbook.source.Code;
import rungbook.source.Nearest;
import rungbook.source.PictureKind;
import rungbook.source.Problem;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** Checks that each picture of a tree exists in the library, is of a known kind, and is not too large. */
public final class PictureLinks {

  static final Code PICTURE_KIND = Code.of("picture-kind");
  static final Code PICTURE_MISSING = Code.of("picture-missing");
  static final Code PICTURE_OUTSIDE = Code.of("picture-outside");
  static final Code PICTURE_TOO_LARGE = Code.of("picture-too-large");
  static final Code PICTURE_WITHOUT_WORDS = Code.of("picture-without-words");

  private PictureLinks() {}

  static List<Problem> inspect(Tree tree, Map<String, byte[]> pictures) {
    var problems = new ArrayList<Problem>();
    for (Document document : documents(tree)) {
      document.pictures().forEach(picture -> inspect(document, picture, pictures).ifPresent(problems::add));
    }
    return problems;
  }

  /** Compared by identity: comparing documents by value would compare whole files. */
  private static Set<Document> documents(Tree tree) {
    Set<Document> documents = Collections.newSetFromMap(new IdentityHashMap<>());
    documents.add(tree.document());
    for (Step step : tree.steps()) {
      documents.add(step.header().document());
    }
    return documents;
  }

  private static Optional<Problem> inspect(Document document, Picture picture, Map<String, byte[]> pictures) {
    Optional<String> path = path(document.source().name(), picture.target());
    if (path.isEmpty()) {
      return problem(PICTURE_OUTSIDE, document, picture);
    }
    if (PictureKind.of(path.get()).isEmpty()) {
      return problem(PICTURE_KIND, document, picture);
    }
    byte[] bytes = pictures.get(path.get());
    if (bytes == null) {
      return problem(PICTURE_MISSING, document, picture)
          .map(p -> p.near(picture.target(), nearest(document, picture, pictures.keySet())));
    }
    if (bytes.length > PictureKind.MOST_BYTES) {
      return problem(PICTURE_TOO_LARGE, document, picture);
    }
    return picture.alternative().isBlank() ? problem(PICTURE_WITHOUT_WORDS, document, picture) : Optional.empty();
  }

  private static Optional<String> nearest(Document document, Picture picture, Set<String> paths) {
    String file = document.source().name();
    String folder = file.substring(0, file.lastIndexOf('/') + 1);
    List<String> targets = paths.stream().filter(path -> path.startsWith(folder))
        .map(path -> path.substring(folder.length())).toList();
    return Nearest.to(picture.target(), targets);
  }

  private static Optional<Problem> problem(Code code, Document document, Picture picture) {
    return Optional.of(Problem.at(code, document.source(), picture.span()).with("picture", picture.target()));
  }

  /**
   * A picture's path in the library, resolved from the file that shows it; empty if it is outside that file's folder or
   * is a URL.
   */
  public static Optional<String> path(String file, String target) {
    boolean address = target.contains(":") || target.startsWith("/") || target.contains("\\");
    boolean climbs = Stream.of(target.split("/")).anyMatch(part -> part.equals("..") || part.equals("."));
    return address || climbs || target.isBlank() ? Optional.empty()
        : Optional.of(file.substring(0, file.lastIndexOf('/') + 1) + target);
  }
}
