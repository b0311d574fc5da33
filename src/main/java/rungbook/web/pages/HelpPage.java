package rungbook.web.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;

/** How a tree is written, on one page. */
@Path("/help")
@Produces(MediaType.TEXT_HTML)
class HelpPage {

  @CheckedTemplate(basePath = "")
  static final class Templates {
    private Templates() {}

    static native TemplateInstance help();
  }

  @GET
  public TemplateInstance show() {
    return Templates.help();
  }
}
