package rungbook.web.pages;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;

/** How a tree is written, on one page. */
@Path("/help")
@Produces(MediaType.TEXT_HTML)
class HelpPage {

  @GET
  public TemplateInstance show() {
    return Pages.help();
  }
}
