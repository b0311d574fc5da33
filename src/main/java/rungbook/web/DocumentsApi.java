package rungbook.web;

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
import rungbook.store.Draft;
import rungbook.store.Revision;
import rungbook.store.Save;
import rungbook.store.Store;
import rungbook.text.UrlPath;
import rungbook.text.Day;

/** The library's texts, by path. */
@Path("/api/documents")
@Tag(name = "documents", description = "The library's texts, by path: trees, and what they share")
@Produces(MediaType.APPLICATION_JSON)
class DocumentsApi {
  private final Store store;

  DocumentsApi(Store store) {
    this.store = store;
  }

  /** A revision without its content. {@code revision} is the number that the next save names as {@code basedOn}. */
  record Entry(String path, int revision, boolean removed, String author, String message, Instant at, String parent, String hash) {
    static Entry of(Revision r) {
      return new Entry(r.path().text(), r.number(), !r.isThere(), r.author(), r.message(), r.at(), r.parent().hex(), r.hash().hex());
    }

    /** The time as people read it, in the machine's own zone. */
    public String day() {
      return Day.andTime(at.atZone(ZoneId.systemDefault()));
    }

    public String briefHash() {
      return hash.substring(0, 10);
    }
  }

  /** @param text null for a picture: {@code /api/files} has its bytes */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Text(Entry entry, String text) {
    static Text of(Revision revision) {
      return new Text(Entry.of(revision), revision.path().isPicture() ? null : revision.text());
    }
  }

  /** What a client sends to save. {@code basedOn} is 0 for a new document. */
  record Saving(int basedOn, String text, String author, String message) {}

  /**
   * @param text null for a picture
   * @param href where its bytes are
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record KeptDraft(long id, int basedOn, String author, String message, Instant at, String text, String href) {
    static KeptDraft of(Draft d) {
      return new KeptDraft(d.id(), d.basedOn(), d.author(), d.message(), d.at(), d.path().isPicture() ? null : d.text(),
          "/api/files/" + UrlPath.of(d.path().text()) + "?draft=" + d.id());
    }
  }

  @GET
  @Operation(summary = "Every document's newest revision, without its content")
  public List<Entry> list(@QueryParam("under") @DefaultValue("") String under) {
    return store.heads().stream().filter(head -> head.path().text().startsWith(under)).map(Entry::of).toList();
  }

  @GET
  @Path("{path:.+}")
  @Operation(summary = "A text as it is now, or as a revision had it")
  public Text read(String path, @QueryParam("revision") Integer number) {
    var at = Texts.path(path);
    return Text.of(number == null ? Texts.head(store, at) : Texts.revision(store, at, number));
  }

  @PUT
  @Path("{path:.+}")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Save a text as a new revision",
      description = "Answers 409 with the newer revision when somebody else saved first; the text sent is then kept as a draft")
  public Entry save(String path, Saving saving) {
    var save = Save.text(Texts.path(path), saving.basedOn(), saving.text(), saving.author(), saving.message());
    return Entry.of(Texts.saved(store.save(save)));
  }

  @DELETE
  @Path("{path:.+}")
  @Operation(summary = "Take a document out of the library; its history stays")
  public Entry remove(String path, @QueryParam("basedOn") int basedOn, @QueryParam("author") String author,
      @QueryParam("message") @DefaultValue("") String message) {
    var save = Save.removed(Texts.path(path), basedOn, author, message);
    return Entry.of(Texts.saved(store.save(save)));
  }
}
