package rungbook.web.views;

import java.util.Optional;
import java.util.regex.Pattern;
import rungbook.library.PictureLinks;
import rungbook.markdown.Prose;
import rungbook.source.PictureKind;
import rungbook.text.UrlPath;

/**
 * Where a text's links and pictures lead on a page: to its own steps, to other trees, to the open web by an ordinary
 * link.
 */
public final class PageLinks implements Prose.Targets {
  private static final Pattern TREE = Pattern.compile("([^:/?#]+)\\.md(#.*)?");
  private final String file;

  /** @param file the text's own path in the library */
  public PageLinks(String file) {
    this.file = file;
  }

  @Override
  public Optional<String> link(String written) {
    var tree = TREE.matcher(written);
    return tree.matches() ? Optional.of(tree(tree.group(1), tree.group(2))) : Prose.Targets.safeLink(written);
  }

  @Override
  public Optional<String> picture(String written) {
    return PictureLinks.path(file, written).map(path -> "/api/files/" + UrlPath.of(path));
  }

  /** The page of a text, or of a picture's history. */
  public static String page(String path) {
    var at = UrlPath.of(path);
    return PictureKind.of(path).isPresent() ? "/history/" + at
        : path.startsWith("trees/") ? "/tree/" + at : "/text/" + at;
  }

  private static String tree(String id, String step) {
    return "/tree/trees/" + UrlPath.of(id) + ".md" + (step == null ? "" : step);
  }
}
