package rungbook.web.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.CookieParam;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import rungbook.markdown.Slug;
import rungbook.store.Store;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Revision;
import rungbook.system.Vocabulary;
import rungbook.text.UrlPath;
import rungbook.web.change.NewName;
import rungbook.web.http.AuthorCookie;
import rungbook.web.http.LoopbackFilter;
import rungbook.web.http.ProblemException;
import rungbook.web.service.CompiledLibrary;
import rungbook.web.service.Requests;

/** The editor, and the form for a new tree. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
class EditPage {
  private final Store store;
  private final CompiledLibrary library;

  EditPage(Store store, CompiledLibrary library) {
    this.store = store;
    this.library = library;
  }

  /** @param basedOn the revision the text is from; 0 for a new document */
  record View(String path, String href, String viewHref, String historyHref, String text, int basedOn, String author,
      String nonce, int line,
      boolean tree) {}

  /** @param systems what a new tree can be for, by id */
  record NewView(List<SystemChoice> systems) {}

  record SystemChoice(String id, String title) {}

  @CheckedTemplate(basePath = "")
  static final class Templates {
    private Templates() {}

    static native TemplateInstance edit(View edit);

    static native TemplateInstance newTree(NewView choice);
  }

  /** @param draft the id of a conflicting draft to edit on top of the newest revision; 0 for the revision itself */
  @GET
  @Path("edit/{path:.+}")
  public TemplateInstance edit(String path, @QueryParam("line") @DefaultValue("1") int line,
      @QueryParam("draft") long draft,
      @CookieParam(AuthorCookie.NAME) @DefaultValue("") String author, @Context RoutingContext request) {
    var at = Requests.path(path);
    if (at.isPicture()) {
      throw ProblemException.badRequest("`" + at + "` is a picture", draft == 0
          ? "upload a new one from the editor of the tree that shows it"
          : "download the draft from the picture's history, and upload it from the editor of the tree that shows it");
    }
    var head = Requests.head(store, at);
    return Templates
        .edit(view(at, draft == 0 ? head.text() : Requests.draft(store, at, draft).text(), head.number(), line,
            author, request));
  }

  @GET
  @Path("new")
  public TemplateInstance choose() {
    var systems = library.current().shared().systems().values().stream()
        .map((Vocabulary system) -> new SystemChoice(system.id(), system.title()))
        .sorted(Comparator.comparing(SystemChoice::title)).toList();
    return Templates.newTree(new NewView(systems));
  }

  @GET
  @Path("new/tree")
  public TemplateInstance begin(@QueryParam("title") @DefaultValue("") String title,
      @QueryParam("complaint") @DefaultValue("") String complaint,
      @QueryParam("system") @DefaultValue("") String system,
      @CookieParam(AuthorCookie.NAME) @DefaultValue("") String author,
      @Context RoutingContext request) {
    var at = free("trees/", title);
    return Templates.edit(view(at, NewTexts.tree(title.strip(), complaint.strip(), system), 0, 1, author, request));
  }

  @GET
  @Path("new/text")
  public TemplateInstance beginShared(@QueryParam("folder") @DefaultValue("") String folder,
      @QueryParam("title") @DefaultValue("") String title,
      @CookieParam(AuthorCookie.NAME) @DefaultValue("") String author, @Context RoutingContext request) {
    return Templates.edit(view(free(folder, title), NewTexts.shared(folder, title.strip()), 0, 1, author, request));
  }

  /** @param from the text to begin with */
  @GET
  @Path("new/copy")
  public TemplateInstance beginCopy(@QueryParam("from") String from,
      @QueryParam("title") @DefaultValue("") String title,
      @CookieParam(AuthorCookie.NAME) @DefaultValue("") String author, @Context RoutingContext request) {
    var original = Requests.head(store, Requests.path(from));
    var path = original.path().text();
    if (original.path().isPicture() || NewName.isFixed(original.path())) {
      throw ProblemException.badRequest("`" + path + "` cannot be copied", "choose a tree or a shared text");
    }
    var at = free(path.substring(0, path.lastIndexOf('/') + 1), title);
    return Templates.edit(view(at, NewTexts.copy(original.text(), title.strip()), 0, 1, author, request));
  }

  @GET
  @Path("new/words")
  public TemplateInstance beginWords(@CookieParam(AuthorCookie.NAME) @DefaultValue("") String author,
      @Context RoutingContext request) {
    return Templates.edit(view(requireFree(DocumentPath.WORDS), NewTexts.WORDS, 0, 1, author, request));
  }

  // a removed document's name can be used again: its next revision follows the one that removed it
  private DocumentPath free(String folder, String title) {
    var slug = Slug.of(title);
    if (slug.isBlank()) {
      throw ProblemException.badRequest("a new text needs a title",
          "give it the words that people use, such as `No heat, blower runs`");
    }
    return requireFree(new DocumentPath(folder + slug.substring(0, Math.min(slug.length(), 80)) + ".md"));
  }

  private DocumentPath requireFree(DocumentPath at) {
    if (store.head(at).filter(Revision::isThere).isPresent()) {
      throw ProblemException
          .of(409, "There is such a text already", "`" + at + "` is in the library",
              "give the new one another title, or edit that one")
          .with(Map.of("there", (at.isTree() ? "/tree/" : "/text/") + UrlPath.of(at.text())));
    }
    return at;
  }

  private View view(DocumentPath at, String text, int basedOn, int line, String author, RoutingContext request) {
    var base = basedOn == 0 ? store.head(at).map(Revision::number).orElse(0) : basedOn;
    var href = UrlPath.of(at.text());
    return new View(at.text(), href, basedOn == 0 ? "/" : (at.isTree() ? "/tree/" : "/text/") + href,
        basedOn == 0 ? "" : "/history/" + href,
        text, base, AuthorCookie.name(author), request.get(LoopbackFilter.NONCE), line, at.isTree());
  }
}
