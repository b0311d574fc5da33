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
import java.util.List;
import java.util.Optional;
import rungbook.library.lookup.Uses;
import rungbook.library.mention.Mentions;
import rungbook.library.mention.Renaming;
import rungbook.library.mention.SystemWords;
import rungbook.store.Store;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Revision;
import rungbook.store.document.Save;
import rungbook.text.UrlPath;
import rungbook.web.change.LibraryChanges;
import rungbook.web.change.NewName;
import rungbook.web.change.Preview;
import rungbook.web.change.SystemWordView;
import rungbook.web.change.UseView;
import rungbook.web.http.AuthorCookie;
import rungbook.web.service.CompiledLibrary;
import rungbook.web.service.Requests;
import rungbook.web.views.PageLinks;

/** Where a file is used; renames, copies and removes it. */
@Path("/manage")
@Produces(MediaType.TEXT_HTML)
class ManagePage {
  private final Store store;
  private final CompiledLibrary library;
  private final LibraryChanges changes;

  ManagePage(Store store, CompiledLibrary library, LibraryChanges changes) {
    this.store = store;
    this.library = library;
    this.changes = changes;
  }

  /**
   * @param name the file's own name without its ending
   * @param isFixed whether it has the only name it can have
   * @param words those that a system gives; empty for any other file
   * @param newPath what it is renamed to, with the preview; empty before a new name is given
   */
  record View(String path, String href, String viewHref, int revision, boolean picture, boolean tree, String name,
      boolean isFixed, List<UseView> uses, List<SystemWordView> words, String author, String newName, String newPath,
      Optional<Preview> preview) {}

  @CheckedTemplate(basePath = "")
  static final class Templates {
    private Templates() {}

    static native TemplateInstance manage(View manage);
  }

  @GET
  @Path("{path:.+}")
  public TemplateInstance show(String path, @QueryParam("name") @DefaultValue("") String name,
      @CookieParam(AuthorCookie.NAME) @DefaultValue("") String author) {
    var head = Requests.head(store, Requests.path(path));
    var newPath = name.isBlank() ? Optional.<DocumentPath>empty() : Optional.of(NewName.of(head.path(), name, store));
    return Templates.manage(view(head, AuthorCookie.name(author), name.strip(), newPath));
  }

  private View view(Revision head, String author, String newName, Optional<DocumentPath> newPath) {
    var path = head.path().text();
    var text = library.newest().library().text();
    return new View(path, UrlPath.of(path), PageLinks.page(path), head.number(), head.path().isPicture(),
        head.path().isTree(), NewName.without(head.path()), NewName.isFixed(head.path()),
        UseView.of(Mentions.of(path, text)), path.startsWith(Uses.SYSTEMS) && !head.path().isPicture()
            ? SystemWordView.of(SystemWords.of(path, text)) : List.of(),
        author, newName, newPath.map(DocumentPath::text).orElse(""),
        newPath.map(to -> changes.preview(now -> Renaming.of(path, to.text(), now))));
  }

  @POST
  @Path("rename/{path:.+}")
  public Response rename(String path, @FormParam("name") @DefaultValue("") String name,
      @FormParam("digest") @DefaultValue("") String digest, @FormParam("author") String author) {
    var from = Requests.head(store, Requests.path(path)).path();
    var to = NewName.of(from, name, store);
    changes.make(now -> Renaming.of(from.text(), to.text(), now), digest, author,
        "Renamed `" + from.name() + "` to `" + to.name() + "`");
    return Response.seeOther(URI.create(PageLinks.page(to.text()))).build();
  }

  @POST
  @Path("remove/{path:.+}")
  public Response remove(String path, @FormParam("basedOn") int basedOn, @FormParam("author") String author,
      @FormParam("message") @DefaultValue("") String message) {
    Requests.saved(store.save(Save.removed(Requests.path(path), basedOn, author, message)));
    return Response.seeOther(URI.create("/removed")).build();
  }
}
