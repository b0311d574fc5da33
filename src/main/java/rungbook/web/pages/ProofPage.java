package rungbook.web.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Optional;
import rungbook.library.CompiledTree;
import rungbook.library.Silencing;
import rungbook.proof.advice.Advice;
import rungbook.proof.advice.TreeState;
import rungbook.proof.report.Proof;
import rungbook.source.Problem;
import rungbook.source.Wording;
import rungbook.store.Store;
import rungbook.text.UrlPath;
import rungbook.web.http.Asker;
import rungbook.text.InlineCode;
import rungbook.web.http.ProblemException;
import rungbook.web.service.CheckedLibrary;
import rungbook.web.service.ComparisonService;
import rungbook.web.service.CompiledLibrary;
import rungbook.web.service.ProofService;
import rungbook.web.service.Requests;
import rungbook.web.service.TreeEntry;
import rungbook.web.views.ComparisonView;
import rungbook.web.views.ProblemView;
import rungbook.web.views.ProofView;
import rungbook.web.views.ProofViews;

/** A tree's proof: a page of its own without scripts, a part of the tree's page with them. */
@Path("/proof")
@Produces(MediaType.TEXT_HTML)
class ProofPage {
  private final CompiledLibrary library;
  private final Store store;
  private final ProofService proofs;
  private final ComparisonService comparisons;

  ProofPage(CompiledLibrary library, Store store, ProofService proofs, ComparisonService comparisons) {
    this.library = library;
    this.store = store;
    this.proofs = proofs;
    this.comparisons = comparisons;
  }

  /**
   * @param revision of the tree that is proved
   * @param unproved why there is no proof; empty where there is one
   * @param compared with an earlier revision; empty without a proof, and for a first revision
   * @param problems what the proof shows wrong
   */
  record View(String title, String treeHref, String path, int revision, CheckedLibrary checked,
      List<InlineCode.Part> unproved,
      Optional<ProofView> proof, Optional<ComparisonView> compared, String historyHref,
      List<ProblemView> problems) {
    public String about() {
      return "Proof of " + title;
    }
  }

  @CheckedTemplate(basePath = "")
  static final class Templates {
    private Templates() {}

    static native TemplateInstance proof(View page);
  }

  @GET
  @Path("{path:.+}")
  public TemplateInstance show(String path, @QueryParam("from") Integer from, @Context RoutingContext request) {
    var at = Requests.head(store, Requests.path(path)).path();
    var checked = library.with(at);
    var compiled = checked.tree(at).orElseThrow(() -> ProblemException.noTree(path));
    var href = UrlPath.of(at.text());
    var asker = Asker.of(request);
    var result = proofs.saved(compiled, checked.library(), asker);
    var why = result.proved().isPresent() ? ""
        : Wording.of(result.problems().get(0)).sentence(result.problems().get(0));
    var shown = Silencing.ofProof(compiled.tree(), result).shown();
    return Templates.proof(
        new View(TreeEntry.title(compiled), "/tree/" + href, at.text(), checked.revision(at), checked,
            InlineCode.parts(why), result.proved().map(proof -> view(compiled, proof, shown, href)),
            result.proved().flatMap(proof -> from == null ? comparisons.last(at, proof, checked, asker)
                : Optional.of(comparisons.chosen(at, from, proof, checked, asker))).map(ComparisonView::of),
            "/history/" + href, ProblemView.of(shown)));
  }

  private static ProofView view(CompiledTree compiled, Proof proof, List<Problem> shown, String href) {
    var advice = Advice.of(proof, shown);
    return ProofViews.of(proof, advice, TreeState.of(compiled.problems(), Optional.of(advice)), compiled.path(),
        "/tree/" + href);
  }
}
