package rungbook.web.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.CookieParam;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Arrays;
import rungbook.markdown.DocumentReader;
import rungbook.markdown.Prose;
import rungbook.source.Source;
import rungbook.store.Store;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Revision;
import rungbook.store.document.Save;
import rungbook.text.UrlPath;
import rungbook.web.http.AuthorCookie;
import rungbook.web.http.ProblemException;
import rungbook.web.service.DocumentEntry;
import rungbook.web.service.Requests;
import rungbook.web.views.PageLinks;

/** A document as an older revision had it, and the way back to that. */
@Path("/revision")
@Produces(MediaType.TEXT_HTML)
class RevisionPage {
  private final Store store;

  RevisionPage(Store store) {
    this.store = store;
  }

  /**
   * @param newest the number of the newest revision, which this one may be
   * @param isSame whether the newest has the same content
   * @param prose empty for a picture, and for a revision that removed the document
   */
  record View(String path, String href, DocumentEntry entry, int newest, boolean isSame, boolean picture, String prose,
      String text, String author) {}

  @CheckedTemplate(basePath = "")
  static final class Templates {
    private Templates() {}

    static native TemplateInstance revision(View revision);
  }

  @GET
  @Path("{path:.+}")
  public TemplateInstance show(String path, @QueryParam("number") int number,
      @CookieParam(AuthorCookie.NAME) @DefaultValue("") String author) {
    var at = Requests.path(path);
    var revision = Requests.revision(store, at, number);
    return Templates.revision(view(revision, store.head(at).orElse(revision), AuthorCookie.name(author)));
  }

  private static View view(Revision revision, Revision newest, String author) {
    var at = revision.path();
    var text = at.isPicture() ? "" : revision.text();
    return new View(at.text(), UrlPath.of(at.text()), DocumentEntry.of(revision), newest.number(),
        newest.change() == revision.change() && Arrays.equals(newest.content(), revision.content()),
        at.isPicture(), prose(at, text), text, author);
  }

  private static String prose(DocumentPath at, String text) {
    return text.isEmpty() ? ""
        : Prose.of(DocumentReader.read(new Source(at.text(), text)), new PageLinks(at.text())).whole();
  }

  @POST
  @Path("{path:.+}")
  public Response bringBack(String path, @FormParam("number") int number, @FormParam("basedOn") int basedOn,
      @FormParam("author") String author) {
    var at = Requests.path(path);
    var revision = Requests.revision(store, at, number);
    if (!revision.isThere()) {
      throw ProblemException.badRequest("revision " + number + " took `" + at + "` out of the library",
          "bring back the one before it");
    }
    Requests.saved(store.save(Save.written(at, basedOn, revision.content(), author,
        "Brought back revision " + number)));
    return Response.seeOther(URI.create(PageLinks.page(at.text()))).build();
  }
}
