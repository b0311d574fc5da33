package rungbook.web.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import rungbook.proof.coverage.LibraryCoverage;
import rungbook.web.service.CheckedLibrary;
import rungbook.web.service.CompiledLibrary;
import rungbook.web.service.CoverageService;
import rungbook.web.views.CoverageView;

/** The map of the whole library: every complaint with every fault. */
@Path("/coverage")
@Produces(MediaType.TEXT_HTML)
class CoveragePage {
  private final CompiledLibrary library;
  private final CoverageService coverage;

  CoveragePage(CompiledLibrary library, CoverageService coverage) {
    this.library = library;
    this.coverage = coverage;
  }

  record View(CheckedLibrary checked, List<CoverageView> systems, CoverageService.Found found) {}

  @CheckedTemplate(basePath = "")
  static final class Templates {
    private Templates() {}

    static native TemplateInstance coverage(View page);
  }

  @GET
  public TemplateInstance show() {
    var checked = library.checked();
    var found = coverage.found(checked.library());
    return Templates.coverage(
        new View(checked, LibraryCoverage.of(found.trees()).stream().map(CoverageView::of).toList(), found));
  }
}
