package rungbook.web;

import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import rungbook.store.Chain;
import rungbook.store.Store;
import rungbook.web.DocumentsApi.Entry;
import rungbook.web.DocumentsApi.KeptDraft;

/** What became of a document over time. */
@Path("/api")
@Tag(name = "history", description = "Revisions, differences, and drafts that lost a race")
@Produces(MediaType.APPLICATION_JSON)
class HistoryApi {
  private final Store store;

  HistoryApi(Store store) {
    this.store = store;
  }

  /** @param firstBroken the first revision that is not what its hash says; null while the chain holds */
  record History(List<Entry> revisions, Integer firstBroken) {}

  @GET
  @Path("history/{path:.+}")
  @Operation(summary = "A document's revisions, oldest first, and whether their chain of hashes holds")
  public History history(String path) {
    var revisions = store.history(Texts.path(path));
    if (revisions.isEmpty()) {
      throw Trouble.notFound("`" + path + "` never was in the library", "choose a document from the library");
    }
    return new History(revisions.stream().map(Entry::of).toList(), Chain.firstBroken(revisions).orElse(null));
  }

  @GET
  @Path("difference/{path:.+}")
  @Operation(summary = "What changed between two revisions, line by line")
  public List<Difference.Line> difference(String path, @QueryParam("from") int from, @QueryParam("to") int to) {
    var at = Texts.path(path);
    var before = from == 0 ? "" : Texts.revision(store, at, from).text();
    return Difference.of(before, Texts.revision(store, at, to).text());
  }

  @GET
  @Path("drafts/{path:.+}")
  @Operation(summary = "Texts of this document that lost the race to be saved")
  public List<KeptDraft> drafts(String path) {
    return store.drafts(Texts.path(path)).stream().map(KeptDraft::of).toList();
  }

  @DELETE
  @Path("drafts/{id:\\d+}")
  @Operation(summary = "Put a draft away; its text is then gone")
  public void putAway(long id) {
    store.putAway(id);
  }
}
