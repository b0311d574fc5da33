package rungbook.web.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungbook.library.CompiledTree;
import rungbook.markdown.Section;
import rungbook.store.Store;
import rungbook.store.document.DocumentPath;
import rungbook.text.UrlPath;
import rungbook.tree.Step;
import rungbook.web.http.ProblemException;
import rungbook.web.service.CheckedLibrary;
import rungbook.web.service.CompiledLibrary;
import rungbook.web.service.DocumentEntry;
import rungbook.web.service.MapService;
import rungbook.web.service.PackService;
import rungbook.web.service.ProofService;
import rungbook.web.service.Requests;
import rungbook.web.service.TreeEntry;
import rungbook.web.views.ProblemView;
import rungbook.web.views.StateView;
import rungbook.web.views.StepView;
import rungbook.web.views.StepViews;

/** A tree as people read it: its text, its map, its problems, its pack. */
@Path("/tree")
@Produces(MediaType.TEXT_HTML)
class TreePage {
  private final CompiledLibrary library;
  private final Store store;
  private final PackService packs;
  private final MapService maps;
  private final ProofService proofs;

  TreePage(CompiledLibrary library, Store store, PackService packs, MapService maps, ProofService proofs) {
    this.library = library;
    this.store = store;
    this.packs = packs;
    this.maps = maps;
    this.proofs = proofs;
  }

  /** A step, or a chapter that belongs to none: one of the two is there. */
  record Part(Optional<StepView> step, Optional<Chapter> chapter) {}

  record Chapter(String title, String prose) {}

  /**
   * @param map the tree's drawing as SVG
   * @param pack of the last library that was checked
   * @param isNewest whether that is the newest one
   */
  record View(String path, String href, TreeEntry entry, StateView state, String meter, String systemHref,
      DocumentEntry revision,
      int drafts,
      String introduction, List<Part> parts, List<ProblemView> problems, String map,
      Optional<PackService.Offer> pack, boolean isNewest) {
    /** As packs and field records name the tree. */
    public String id() {
      return path.substring(path.lastIndexOf('/') + 1, path.length() - ".md".length());
    }
  }

  @CheckedTemplate(basePath = "")
  static final class Templates {
    private Templates() {}

    static native TemplateInstance tree(View tree);
  }

  @GET
  @Path("{path:.+}")
  public TemplateInstance show(String path) {
    var at = Requests.path(path);
    var revision = Requests.head(store, at);
    var checked = library.checked();
    var compiled = library.tree(at, checked).orElseThrow(() -> ProblemException.noTree(path));
    return Templates.tree(view(at, compiled, checked, DocumentEntry.of(revision)));
  }

  private View view(DocumentPath at, CompiledTree compiled, CheckedLibrary checked, DocumentEntry revision) {
    var tree = compiled.tree();
    var views = new StepViews(tree, checked.library().shared().cautions());
    return new View(at.text(), UrlPath.of(at.text()), TreeEntry.of(compiled),
        StateView.of(proofs.state(compiled, checked.library())), tree.meter().title(),
        tree.system().map(system -> "/text/shared/systems/" + UrlPath.of(system.id()) + ".md").orElse(""), revision,
        store.drafts(at).size(), views.prose(tree.document()).introduction(), parts(compiled, views),
        ProblemView.of(compiled.problems()), maps.inPage(compiled), packs.offer(at, checked), checked.isNewest());
  }

  // in the order of the text, with its chapters; the steps of fragments come last
  @SuppressWarnings("ReferenceEquality") // a document's value is all its text
  private static List<Part> parts(CompiledTree compiled, StepViews views) {
    var tree = compiled.tree();
    var parts = new ArrayList<Part>();
    for (var section : tree.document().sections()) {
      parts.add(stepOf(tree.steps(), section).map(step -> new Part(Optional.of(views.of(step)), Optional.empty()))
          .orElseGet(() -> new Part(Optional.empty(),
              Optional.of(new Chapter(section.title(), views.prose(tree.document()).of(section))))));
    }
    tree.steps().stream().filter(step -> step.header().document() != tree.document())
        .forEach(step -> parts.add(new Part(Optional.of(views.of(step)), Optional.empty())));
    return parts;
  }

  @SuppressWarnings("ReferenceEquality") // sections with the same text are different steps
  private static Optional<Step> stepOf(List<Step> steps, Section section) {
    return steps.stream().filter(step -> step.header().section() == section).findFirst();
  }
}
