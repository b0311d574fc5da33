package rungbook.web.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.StandardCopyOption;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import rungbook.store.Store;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.LibraryArchive;
import rungbook.store.document.Save;
import rungbook.web.http.LimitedBody;
import rungbook.web.http.ProblemException;
import rungbook.web.service.DocumentEntry;
import rungbook.web.service.Importer;
import rungbook.web.service.Requests;

/** Pictures, and the whole library as a zip. */
@Path("/api")
@Tag(name = "files", description = "Pictures, and the whole library as a zip")
class FilesApi {
  private final Store store;
  private final Importer importer;

  FilesApi(Store store, Importer importer) {
    this.store = store;
    this.importer = importer;
  }

  @GET
  @Path("files/{path:.+}")
  @Operation(summary = "A document's bytes: as they are now, as a revision had them, or a kept draft's")
  public Response file(String path, @QueryParam("revision") Integer revision, @QueryParam("draft") Long draft) {
    var at = Requests.path(path);
    // a picture may hold script of its own: shown alone, it runs in no page of ours
    return Response.ok(content(at, revision, draft), MediaTypes.of(at))
        .header("Content-Security-Policy", "sandbox; default-src 'none'; style-src 'unsafe-inline'")
        .header(HttpHeaders.CACHE_CONTROL, "no-cache")
        .build();
  }

  private byte[] content(DocumentPath at, Integer revision, Long draft) {
    if (draft != null) {
      return Requests.draft(store, at, draft).content();
    }
    return (revision == null ? Requests.head(store, at) : Requests.revision(store, at, revision)).content();
  }

  @PUT
  @Path("files/{path:.+}")
  @Consumes(MediaType.WILDCARD)
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(summary = "Save a picture", description = "`basedOn` is the revision it replaces; 0 for a new one")
  public DocumentEntry savePicture(String path, @QueryParam("basedOn") int basedOn, @QueryParam("author") String author,
      @QueryParam("message") String message, byte[] content) {
    var at = Requests.path(path);
    if (!at.isPicture()) {
      throw ProblemException.badRequest("`" + at + "` is a text", "send texts to /api/documents");
    }
    return DocumentEntry.of(Requests.saved(store.save(Save.written(at, basedOn, content, author, message))));
  }

  @GET
  @Path("export")
  @Produces("application/zip")
  @Operation(summary = "The whole library as a zip of Markdown and pictures")
  public Response export() {
    var zip = new ByteArrayOutputStream();
    LibraryArchive.writeZip(store.heads(), zip);
    return Response.ok(zip.toByteArray())
        .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"library.zip\"").build();
  }

  @POST
  @Path("import")
  @Consumes({"application/zip", MediaType.APPLICATION_OCTET_STREAM})
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(summary = "Import a zip of Markdown and pictures",
      description = "Every file becomes a new revision on top of what is there; "
          + "a file that must be refused stops the whole import")
  public Importer.Report importZip(@QueryParam("author") String author, InputStream zip) throws IOException {
    var file = Files.createTempFile("rungbook-import", ".zip");
    try {
      Files.copy(zip, file, StandardCopyOption.REPLACE_EXISTING);
      return importer.bring(LibraryArchive.ofZip(file), author);
    } catch (LimitedBody.Unread unread) {
      throw unread.problem();
    } finally {
      Files.delete(file);
    }
  }
}
