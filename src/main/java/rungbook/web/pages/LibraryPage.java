package rungbook.web.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import rungbook.web.service.CheckedLibrary;
import rungbook.web.service.CompiledLibrary;
import rungbook.web.service.ProofService;
import rungbook.web.service.TreeEntry;
import rungbook.web.views.Search;
import rungbook.web.views.StateView;

/** The first page: every tree, found by complaint. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
class LibraryPage {
  private final CompiledLibrary library;
  private final ProofService proofs;

  LibraryPage(CompiledLibrary library, ProofService proofs) {
    this.library = library;
    this.proofs = proofs;
  }

  record Row(TreeEntry tree, StateView state) {}

  /** @param asked what was searched for; empty for the whole library */
  record View(String company, String asked, List<Row> trees, int allTrees, CheckedLibrary checked) {}

  @CheckedTemplate(basePath = "")
  static final class Templates {
    private Templates() {}

    static native TemplateInstance library(View library);
  }

  @GET
  public TemplateInstance show(@QueryParam("q") @DefaultValue("") String asked) {
    var checked = library.checked();
    var current = checked.library();
    var found = Search.find(current.trees(), asked).stream()
        .map(tree -> new Row(TreeEntry.of(tree), StateView.of(proofs.state(tree, current)))).toList();
    return Templates.library(
        new View(library.company().orElse(""), asked.strip(), found, current.trees().size(), checked));
  }
}
