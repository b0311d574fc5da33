package rungbook.web.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
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
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import rungbook.store.Store;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Draft;
import rungbook.store.document.Revision;
import rungbook.text.UrlPath;
import rungbook.web.http.ProblemException;
import rungbook.web.service.DocumentEntry;
import rungbook.web.service.KeptDraft;
import rungbook.web.service.Requests;
import rungbook.web.views.Difference;

/** A document's history: its revisions, the difference between two of them, and conflicting drafts. */
@Path("/history")
@Produces(MediaType.TEXT_HTML)
class HistoryPage {
  private static final int MOST_DRAFTS_SHOWN = 10;
  private final Store store;

  HistoryPage(Store store) {
    this.store = store;
  }

  /**
   * @param revisions some of them, newest first
   * @param older the smallest number of these when there are older ones; else 0
   * @param drafts the newest; {@code moreDrafts} is the number of older ones
   * @param firstBroken 0 while the chain of hashes is intact
   */
  record View(String path, String href, String viewHref, boolean picture, List<DocumentEntry> revisions, int older,
      int from, int to,
      List<Difference.Line> difference, List<DraftView> drafts, int moreDrafts, int firstBroken) {
    /** Whether there are two texts of a tree, whose proofs can be compared. */
    public boolean hasProofs() {
      return viewHref.startsWith("/tree/") && from > 0;
    }
  }

  /** A draft and how it differs from the newest revision; no difference for a picture. */
  record DraftView(KeptDraft draft, List<Difference.Line> difference) {}

  @CheckedTemplate(basePath = "")
  static final class Templates {
    private Templates() {}

    static native TemplateInstance history(View history);
  }

  @GET
  @Path("{path:.+}")
  public TemplateInstance show(String path, @QueryParam("from") Integer from, @QueryParam("to") Integer to,
      @QueryParam("before") @DefaultValue("2147483647") int before) {
    var at = Requests.path(path);
    var some = Requests.history(store, at, before);
    var newest = store.head(at).map(Revision::number).orElse(0);
    return Templates.history(view(at, some, from == null ? Math.max(0, newest - 1) : from, to == null ? newest : to));
  }

  private View view(DocumentPath at, List<Revision> some, int from, int to) {
    var newestFirst = new ArrayList<>(some.stream().map(DocumentEntry::of).toList());
    Collections.reverse(newestFirst);
    var older = some.get(0).number() > 1 ? some.get(0).number() : 0;
    var difference = at.isPicture() ? List.<Difference.Line>of() : Difference.of(text(at, from), text(at, to));
    var drafts = store.drafts(at);
    return new View(at.text(), UrlPath.of(at.text()), (at.isTree() ? "/tree/" : "/text/") + UrlPath.of(at.text()),
        at.isPicture(),
        newestFirst, older, from, to, difference, newest(at, drafts), Math.max(0, drafts.size() - MOST_DRAFTS_SHOWN),
        store.firstBroken(at).orElse(0));
  }

  private List<DraftView> newest(DocumentPath at, List<Draft> drafts) {
    var newest = store.head(at).map(Revision::text).orElse("");
    return drafts.stream().skip(Math.max(0, drafts.size() - MOST_DRAFTS_SHOWN)).map(draft -> new DraftView(
        KeptDraft.of(draft), at.isPicture() ? List.of() : Difference.of(newest, draft.text()))).toList();
  }

  private String text(DocumentPath at, int number) {
    return number == 0 ? "" : Requests.revision(store, at, number).text();
  }

  @POST
  @Path("discard-draft/{path:.+}")
  public Response discardDraft(String path, @FormParam("draft") long draft) {
    var at = Requests.path(path);
    if (!store.discardDraft(at, draft)) {
      throw ProblemException.notFound("`" + at + "` has no draft " + draft + ", or no longer",
          "its history shows what is still kept");
    }
    return Response.seeOther(URI.create("/history/" + UrlPath.of(at.text()))).build();
  }
}
