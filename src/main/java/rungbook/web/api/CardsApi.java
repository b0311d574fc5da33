package rungbook.web.api;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import rungbook.library.card.CardPages;
import rungbook.pack.PackFile;
import rungbook.web.http.ProblemException;
import rungbook.web.service.CompiledLibrary;

/** Pocket cards: what a healthy system reads, to print and fold. */
@Path("/api/cards")
@Tag(name = "packs", description = "Trees as self-contained files to carry")
class CardsApi {
  private final CompiledLibrary library;

  CardsApi(CompiledLibrary library) {
    this.library = library;
  }

  @GET
  @Path("{system}")
  @Produces(MediaType.TEXT_HTML)
  @Operation(summary = "A system's pocket card, one HTML file",
      description = "There is one for each system whose circuit can be solved")
  public Response card(String system) {
    PackFile card = CardPages.of(system, library.checked().library())
        .orElseThrow(() -> ProblemException.notFound("there is no pocket card of `" + system + "`",
            "choose a system with a circuit that can be solved"));
    return PacksApi.download(card, "text/html; charset=UTF-8");
  }
}
