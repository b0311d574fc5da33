package rungbook.web;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import rungbook.store.Chain;
import rungbook.store.DocumentPath;
import rungbook.store.Revision;
import rungbook.store.Store;
import rungbook.text.UrlPath;

/** What became of a document: its revisions, the difference between two of them, and drafts that lost a race. */
@Path("/history")
@Produces(MediaType.TEXT_HTML)
class HistoryPage {
  private final Store store;

  HistoryPage(Store store) {
    this.store = store;
  }

  /** @param firstBroken 0 while the chain of hashes holds */
  record View(String path, String href, String viewHref, boolean picture, List<DocumentsApi.Entry> revisions, int from, int to,
              List<Difference.Line> difference, List<DraftView> drafts, int firstBroken) {}

  /** A draft, and what it has that the newest revision has not. */
  record DraftView(DocumentsApi.KeptDraft draft, List<Difference.Line> difference) {}

  @GET
  @Path("{path:.+}")
  public TemplateInstance show(String path, @QueryParam("from") Integer from, @QueryParam("to") Integer to) {
    var at = Texts.path(path);
    var history = store.history(at);
    if (history.isEmpty()) {
      throw Trouble.notFound("`" + path + "` never was in the library", "choose a document from the library");
    }
    var newest = history.size();
    return Pages.history(view(at, history, from == null ? Math.max(0, newest - 1) : from, to == null ? newest : to));
  }

  private View view(DocumentPath at, List<Revision> history, int from, int to) {
    var newestFirst = new ArrayList<>(history.stream().map(DocumentsApi.Entry::of).toList());
    Collections.reverse(newestFirst);
    var difference = at.isPicture() ? List.<Difference.Line>of() : Difference.of(text(at, history, from), text(at, history, to));
    var newest = history.get(history.size() - 1).text();
    var drafts = store.drafts(at).stream().map(DocumentsApi.KeptDraft::of)
        .map(draft -> new DraftView(draft, at.isPicture() ? List.<Difference.Line>of() : Difference.of(newest, draft.text()))).toList();
    return new View(at.text(), UrlPath.of(at.text()), (at.isTree() ? "/tree/" : "/text/") + UrlPath.of(at.text()), at.isPicture(),
        newestFirst, from, to, difference, drafts, Chain.firstBroken(history).orElse(0));
  }

  private static String text(DocumentPath at, List<Revision> history, int number) {
    if (number < 0 || number > history.size()) {
      throw Trouble.notFound("`" + at + "` has no revision " + number, "choose one from its history");
    }
    return number == 0 ? "" : history.get(number - 1).text();
  }

  @POST
  @Path("put-away/{path:.+}")
  public Response putAway(String path, @FormParam("draft") long draft) {
    store.putAway(draft);
    return Response.seeOther(URI.create("/history/" + UrlPath.of(Texts.path(path).text()))).build();
  }
}
