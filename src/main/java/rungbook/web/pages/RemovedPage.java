package rungbook.web.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import rungbook.store.Store;
import rungbook.text.UrlPath;
import rungbook.web.service.DocumentEntry;

/** What was taken out of the library, and can be brought back. */
@Path("/removed")
@Produces(MediaType.TEXT_HTML)
class RemovedPage {
  private final Store store;

  RemovedPage(Store store) {
    this.store = store;
  }

  /** @param entry the revision that took it out */
  record Removed(DocumentEntry entry) {
    /** The text as it was before. */
    public String before() {
      return "/revision/" + UrlPath.of(entry.path()) + "?number=" + (entry.revision() - 1);
    }

    public String history() {
      return "/history/" + UrlPath.of(entry.path());
    }
  }

  @CheckedTemplate(basePath = "")
  static final class Templates {
    private Templates() {}

    static native TemplateInstance removed(List<Removed> removed);
  }

  @GET
  public TemplateInstance list() {
    return Templates.removed(store.removed().stream().map(DocumentEntry::of).map(Removed::new).toList());
  }
}
