package rungbook.web.api;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import rungbook.pack.PackFile;
import rungbook.web.http.ProblemException;
import rungbook.web.practice.PracticeService;
import rungbook.web.service.CompiledLibrary;

/** Practice pages: a system with a hidden fault, as a file to carry. */
@Path("/api/practice")
@Tag(name = "packs", description = "Trees as self-contained files to carry")
class PracticeApi {
  private final CompiledLibrary library;
  private final PracticeService practice;

  PracticeApi(CompiledLibrary library, PracticeService practice) {
    this.library = library;
    this.practice = practice;
  }

  @GET
  @Path("{system}")
  @Produces(MediaType.TEXT_HTML)
  @Operation(summary = "A system's practice page, one HTML file",
      description = "There is one for each system whose circuit can be solved and that some tree without errors is for")
  public Response page(String system) {
    var page = practice.of(system, library.checked().library())
        .orElseThrow(() -> ProblemException.notFound("there is no practice page of `" + system + "`",
            "choose a system with a circuit that some tree without errors is for"));
    return PacksApi.download(new PackFile(page.fileName(), page.bytes()), "text/html; charset=UTF-8");
  }
}
