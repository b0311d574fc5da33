package rungbook.web.api;

import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jspecify.annotations.Nullable;
import rungbook.store.Store;
import rungbook.web.service.DocumentEntry;
import rungbook.web.service.KeptDraft;
import rungbook.web.service.Requests;
import rungbook.web.views.Difference;

/** What became of a document over time. */
@Path("/api")
@Tag(name = "history", description = "Revisions, differences, and conflicting drafts")
@Produces(MediaType.APPLICATION_JSON)
class HistoryApi {
  private final Store store;

  HistoryApi(Store store) {
    this.store = store;
  }

  /** @param firstBroken the first revision that is not what its hash says; null while the chain holds */
  record History(List<DocumentEntry> revisions, @Nullable Integer firstBroken) {}

  @GET
  @Path("history/{path:.+}")
  @Operation(summary = "A document's newest revisions, oldest first, and whether the chain of hashes is intact",
      description = "At most " + Requests.REVISIONS_AT_ONCE + " of them; `before` asks for those older than a revision")
  public History history(String path, @QueryParam("before") @DefaultValue("2147483647") int before) {
    var at = Requests.path(path);
    return new History(Requests.history(store, at, before).stream().map(DocumentEntry::of).toList(),
        store.firstBroken(at).orElse(null));
  }

  @GET
  @Path("difference/{path:.+}")
  @Operation(summary = "What changed between two revisions, line by line")
  public List<Difference.Line> difference(String path, @QueryParam("from") int from, @QueryParam("to") int to) {
    var at = Requests.path(path);
    var before = from == 0 ? "" : Requests.revision(store, at, from).text();
    return Difference.of(before, Requests.revision(store, at, to).text());
  }

  @GET
  @Path("drafts/{path:.+}")
  @Operation(summary = "Conflicting drafts of this document")
  public List<KeptDraft> drafts(String path) {
    return store.drafts(Requests.path(path)).stream().map(KeptDraft::of).toList();
  }

  @DELETE
  @Path("drafts/{id:\\d+}")
  @Operation(summary = "Discard a draft for good")
  public void discardDraft(long id) {
    store.discardDraft(id);
  }
}
