package rungbook.web.api;

import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import rungbook.library.Silencing;
import rungbook.report.Report;
import rungbook.report.json.ProofJson;
import rungbook.store.Store;
import rungbook.web.http.Asker;
import rungbook.web.http.ProblemException;
import rungbook.web.service.ComparisonService;
import rungbook.web.service.CompiledLibrary;
import rungbook.web.service.ProofService;
import rungbook.web.service.Requests;

/** What a walk through the simulated circuit shows of a tree. */
@Path("/api/proof")
@Tag(name = "proof",
    description = "Trees followed through the simulated circuit of their system with every fault of it")
@Produces(MediaType.APPLICATION_JSON)
class ProofApi {
  private final CompiledLibrary library;
  private final Store store;
  private final ProofService proofs;
  private final ComparisonService comparisons;

  ProofApi(CompiledLibrary library, Store store, ProofService proofs, ComparisonService comparisons) {
    this.library = library;
    this.store = store;
    this.proofs = proofs;
    this.comparisons = comparisons;
  }

  @GET
  @Path("{path:.+}")
  @Operation(summary = "The proof of a tree as saved",
      description = "The same fields as `rungbook prove --format json`; "
          + "`proofs` is empty when the tree cannot be proved, and a problem says why")
  public String saved(String path,
      @Parameter(description = "an earlier revision; `against` then says which faults end elsewhere") //
      @QueryParam("from") Integer from,
      @Context RoutingContext request) {
    var at = Requests.head(store, Requests.path(path)).path();
    var checked = library.with(at);
    var compiled = checked.tree(at).orElseThrow(() -> ProblemException.noTree(path));
    var asker = Asker.of(request);
    var result = proofs.saved(compiled, checked.library(), asker);
    var found = Silencing.ofProof(compiled.tree(), result);
    var shown = result.proved().map(proof -> new ProofJson.Of(at.text(), proof,
        Optional.ofNullable(from).map(number -> comparisons.chosen(at, number, proof, checked, asker)),
        Optional.empty()));
    return ProofJson.of(shown.stream().toList(), new Report(1, found.shown(), found.silenced()));
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "The proof in brief of a tree that is being written", description = "Nothing is saved. "
      + "Answers 409 when the same author sent a newer text of the same tree meanwhile, "
      + "503 when the proof was stopped because it ran too long")
  public LiveProof draft(LiveApi.Written written, @Context RoutingContext request) {
    var at = Requests.path(written.path());
    if (!at.isTree()) {
      throw ProblemException.badRequest("`" + at + "` is no tree", "only trees are proved");
    }
    var compiled = library.compile(at, LiveApi.text(written));
    return LiveProof.of(compiled, proofs.draft(compiled, Asker.of(request)));
  }
}
