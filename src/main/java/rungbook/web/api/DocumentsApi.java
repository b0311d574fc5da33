package rungbook.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import rungbook.store.Store;
import rungbook.store.document.Draft;
import rungbook.store.document.Revision;
import rungbook.store.document.Save;
import rungbook.text.Day;
import rungbook.text.UrlPath;
import rungbook.web.service.DocumentEntry;
import rungbook.web.service.DocumentText;
import rungbook.web.service.Requests;

/** The library's texts, by path. */
@Path("/api/documents")
@Tag(name = "documents", description = "The library's texts, by path: trees, and what they share")
@Produces(MediaType.APPLICATION_JSON)
public class DocumentsApi {
  private final Store store;

  DocumentsApi(Store store) {
    this.store = store;
  }

  /** What a client sends to save. {@code basedOn} is 0 for a new document. */
  record Saving(int basedOn, String text, String author, String message) {}

  @GET
  @Operation(summary = "Every document's newest revision, without its content")
  public List<DocumentEntry> list(@QueryParam("under") @DefaultValue("") String under) {
    return store.heads().stream().filter(head -> head.path().text().startsWith(under)).map(DocumentEntry::of).toList();
  }

  @GET
  @Path("{path:.+}")
  @Operation(summary = "A text as it is now, or as a revision had it")
  public DocumentText read(String path, @QueryParam("revision") Integer number) {
    var at = Requests.path(path);
    return DocumentText.of(number == null ? Requests.head(store, at) : Requests.revision(store, at, number));
  }

  @PUT
  @Path("{path:.+}")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Save a text as a new revision",
      description = "Answers 409 with the newer revision when somebody else saved first; "
          + "the text sent is then kept as a draft")
  public DocumentEntry save(String path, Saving saving) {
    var save = Save.text(Requests.path(path), saving.basedOn(), saving.text(), saving.author(), saving.message());
    return DocumentEntry.of(Requests.saved(store.save(save)));
  }

  @DELETE
  @Path("{path:.+}")
  @Operation(summary = "Take a document out of the library; its history stays")
  public DocumentEntry remove(String path, @QueryParam("basedOn") int basedOn, @QueryParam("author") String author,
      @QueryParam("message") @DefaultValue("") String message) {
    var save = Save.removed(Requests.path(path), basedOn, author, message);
    return DocumentEntry.of(Requests.saved(store.save(save)));
  }
}
