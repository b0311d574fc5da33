package rungbook.web.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import rungbook.proof.coverage.LibraryCoverage;
import rungbook.web.http.Asker;
import rungbook.web.service.CheckedLibrary;
import rungbook.web.service.CompiledLibrary;
import rungbook.web.service.ProofService;
import rungbook.web.views.CoverageView;

/** The map of the whole library: every complaint with every fault. */
@Path("/coverage")
@Produces(MediaType.TEXT_HTML)
class CoveragePage {
  private final CompiledLibrary library;
  private final ProofService proofs;

  CoveragePage(CompiledLibrary library, ProofService proofs) {
    this.library = library;
    this.proofs = proofs;
  }

  /** @param waiting how many trees are not proved yet */
  record View(CheckedLibrary checked, List<CoverageView> systems, int waiting) {}

  @CheckedTemplate(basePath = "")
  static final class Templates {
    private Templates() {}

    static native TemplateInstance coverage(View page);
  }

  @GET
  public TemplateInstance show(@Context RoutingContext request) {
    var checked = library.checked();
    var trees = checked.library().trees();
    var results = proofs.savedInTime(trees, checked.library(), Asker.of(request));
    var proved = results.stream().flatMap(result -> result.proved().stream()).toList();
    return Templates.coverage(new View(checked, LibraryCoverage.of(proved).stream().map(CoverageView::of).toList(),
        trees.size() - results.size()));
  }
}
