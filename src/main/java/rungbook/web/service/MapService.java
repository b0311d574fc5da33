package rungbook.web.service;

import jakarta.enterprise.context.ApplicationScoped;
import rungbook.library.CompiledTree;
import rungbook.map.Diagram;
import rungbook.map.Drawing;
import rungbook.text.UrlPath;

/** The maps of the library's trees; a map is laid out again only when its tree changes. */
@ApplicationScoped
public class MapService {
  private final PerTree<String> inPages = new PerTree<>();
  private final PerTree<String> alone = new PerTree<>();

  /** The map as part of the tree's own page. */
  public String inPage(CompiledTree tree) {
    return inPages.of(tree, "", () -> Drawing.of(Diagram.of(tree.tree(), Diagram.Shares.UNKNOWN)));
  }

  /** The map as a picture of its own, with links to the tree's page. */
  public String alone(CompiledTree tree) {
    return alone.of(tree, "",
        () -> Drawing.of(Diagram.of(tree.tree(), Diagram.Shares.UNKNOWN), "/tree/" + UrlPath.of(tree.path())));
  }
}
