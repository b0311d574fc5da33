package rungbook.web.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import rungbook.library.CompiledTree;
import rungbook.markdown.DocumentReader;
import rungbook.markdown.Prose;
import rungbook.proof.advice.TreeState;
import rungbook.source.ProblemList;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.store.Store;
import rungbook.store.document.StoreLimits;
import rungbook.tree.Step;
import rungbook.web.http.ProblemException;
import rungbook.web.service.CompiledLibrary;
import rungbook.web.service.MapService;
import rungbook.web.service.Requests;
import rungbook.web.service.TreeEntry;
import rungbook.web.views.Completions;
import rungbook.web.views.PageLinks;
import rungbook.web.views.ProblemView;
import rungbook.web.views.Search;
import rungbook.web.views.StateView;
import rungbook.web.views.StepViews;

/** What an editor asks while somebody types. Nothing is saved. */
@Path("/api")
@Tag(name = "live", description = "Problems, previews and words for a text that is being written; nothing is saved")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
class LiveApi {
  private final CompiledLibrary library;
  private final Store store;
  private final MapService maps;

  LiveApi(CompiledLibrary library, Store store, MapService maps) {
    this.library = library;
    this.store = store;
    this.maps = maps;
  }

  /** @param line where the cursor is, counted from 1 */
  record Written(String path, String text, int line) {}

  /**
   * @param silenced how many more problems the text silences at their place, with a reason
   * @param state of the text without its proof
   */
  record Checked(List<ProblemView> problems, int silenced, StateView state) {
    static Checked of(ProblemList found) {
      return new Checked(ProblemView.of(found.shown()), found.silenced().size(),
          StateView.of(TreeState.of(found.shown(), Optional.empty())));
    }
  }

  /** @param title the step's, the document's where the cursor is in no step */
  record Preview(String title, String html) {}

  @POST
  @Path("check")
  @Operation(summary = "Everything wrong with a text, against the library as saved")
  public Checked check(Written written) {
    return Checked.of(library.found(Requests.path(written.path()), text(written)));
  }

  @GET
  @Path("check/{path:.+}")
  @Consumes(MediaType.WILDCARD)
  @Operation(summary = "Everything wrong with a text as saved")
  public Checked checkSaved(String path) {
    return Checked.of(library.found(Requests.head(store, Requests.path(path)).path()));
  }

  @POST
  @Path("preview")
  @Operation(summary = "The step under the cursor as a page shows it; for any other text, the whole of it")
  public Preview preview(Written written) {
    var path = Requests.path(written.path());
    if (!path.isTree()) {
      var document = DocumentReader.read(new Source(path.text(), text(written)));
      return new Preview(path.name(), Prose.of(document, new PageLinks(path.text())).whole());
    }
    var compiled = library.compile(path, text(written));
    var views = new StepViews(compiled.tree(), library.current().shared().cautions());
    return stepAt(compiled, written.line())
        .map(step -> new Preview(step.title(), views.of(step).html()))
        .orElseGet(
            () -> new Preview(TreeEntry.title(compiled), views.prose(compiled.tree().document()).introduction()));
  }

  @GET
  @Path("map/{path:.+}")
  @Consumes(MediaType.WILDCARD)
  @Produces("image/svg+xml")
  @Operation(summary = "A tree's map as SVG")
  public String map(String path) {
    var at = Requests.head(store, Requests.path(path)).path();
    return library.tree(at).map(maps::alone)
        .orElseThrow(() -> ProblemException.noTree(path));
  }

  @GET
  @Path("words")
  @Consumes(MediaType.WILDCARD)
  @Operation(summary = "The words that a tree may use: names of shared texts, and the words of a system")
  public Completions words(@QueryParam("system") @DefaultValue("") String system) {
    return Completions.of(library.current(), system);
  }

  @GET
  @Path("library")
  @Consumes(MediaType.WILDCARD)
  @Operation(summary = "Trees, found by complaint")
  public List<TreeEntry> library(@QueryParam("q") @DefaultValue("") String asked) {
    return Search.find(library.current().trees(), asked).stream().map(TreeEntry::of).toList();
  }

  static String text(Written written) {
    if (Requests.utf8(written.text()).length > StoreLimits.TEXT) {
      throw ProblemException.tooLarge("the text is larger than " + (StoreLimits.TEXT >> 20) + " MB",
          "split the tree in two");
    }
    return written.text();
  }

  @SuppressWarnings("ReferenceEquality") // a document's value is all its text
  private static Optional<Step> stepAt(CompiledTree compiled, int line) {
    var source = compiled.tree().source();
    var offset = source.lineSpan(Math.max(1, Math.min(line, source.lineCount()))).start();
    return compiled.tree().steps().stream()
        .filter(step -> step.header().document() == compiled.tree().document())
        .filter(step -> isAround(step.header().section().span(), offset, source))
        .findFirst();
  }

  // after the last line break the cursor is still in the last step
  private static boolean isAround(Span section, int offset, Source source) {
    return section.start() <= offset && (offset < section.end() || section.end() == source.text().length());
  }
}
