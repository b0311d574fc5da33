package rungbook.web.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import rungbook.report.ProofJson;
import rungbook.report.Report;
import rungbook.store.Store;
import rungbook.web.http.ProblemException;
import rungbook.web.service.CompiledLibrary;
import rungbook.web.service.ProofService;
import rungbook.web.service.Requests;

/** What a walk through the simulated circuit shows of a tree. */
@Path("/api/proof")
@Tag(name = "proof",
    description = "Trees followed through the simulated circuit of their system with every fault of it")
@Produces(MediaType.APPLICATION_JSON)
class ProofApi {
  private final CompiledLibrary shelf;
  private final Store store;
  private final ProofService desk;

  ProofApi(CompiledLibrary shelf, Store store, ProofService desk) {
    this.shelf = shelf;
    this.store = store;
    this.desk = desk;
  }

  @GET
  @Path("{path:.+}")
  @Operation(summary = "The proof of a tree as saved",
      description = "The same fields as `rungbook prove --format json`; "
          + "`proofs` is empty when the tree cannot be proved, and a problem says why")
  public String saved(String path) {
    var at = Requests.head(store, Requests.path(path)).path();
    var result = desk.saved(shelf.tree(at).orElseThrow(() -> ProblemException.noTree(path)));
    return ProofJson.of(result.proved().map(proof -> new ProofJson.Of(at.text(), proof)).stream().toList(),
        new Report(1, result.problems()));
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "The proof in brief of a tree that is being written", description = "Nothing is saved. "
      + "Answers 409 when a newer text of the same tree was sent meanwhile, 503 when the proof takes too long")
  public LiveProof typed(LiveApi.Written written) {
    var at = Requests.path(written.path());
    if (!at.isTree()) {
      throw ProblemException.badRequest("`" + at + "` is no tree", "only trees are proved");
    }
    return LiveProof.of(desk.typed(shelf.compile(at, LiveApi.text(written))));
  }
}
