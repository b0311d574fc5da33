package rungbook.web.api;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import rungbook.pack.PackFile;
import rungbook.pack.book.Book;
import rungbook.pack.page.FileNames;
import rungbook.web.service.CompanyKey;
import rungbook.web.service.CompiledLibrary;
import rungbook.web.service.TogetherService;

/** All trees in one file: a page for phones that open one file at a time, a book for readers that open books. */
@Path("/api")
@Tag(name = "packs", description = "Trees as self-contained files to carry")
class TogetherApi {
  private static final String OF_ALL = "trees";

  private final CompiledLibrary library;
  private final TogetherService trees;
  private final CompanyKey key;

  TogetherApi(CompiledLibrary library, TogetherService trees, CompanyKey key) {
    this.library = library;
    this.trees = trees;
    this.key = key;
  }

  @GET
  @Path("library-file")
  @Produces({MediaType.TEXT_HTML, MediaType.APPLICATION_OCTET_STREAM})
  @Operation(summary = "Every tree without errors, as one HTML file",
      description = "Trees with errors are left out; its first page names them and says why; "
          + "with `signature=true` the 64 bytes of its signature instead, if the server has a key")
  public Response library(@QueryParam("signature") boolean signature) {
    var page = new PackFile(OF_ALL + FileNames.ENDING, trees.page(library.checked()).bytes());
    return answer(page, "text/html; charset=UTF-8", signature);
  }

  @GET
  @Path("book")
  @Produces({Book.MEDIA_TYPE, MediaType.APPLICATION_OCTET_STREAM})
  @Operation(summary = "Every tree without errors, as one EPUB 3 book",
      description = "Trees with errors are left out; its title page names them and says why; "
          + "with `signature=true` the 64 bytes of its signature instead, if the server has a key")
  public Response book(@QueryParam("signature") boolean signature) {
    var file = new PackFile(OF_ALL + Book.ENDING, trees.book(library.checked()).bytes());
    return answer(file, Book.MEDIA_TYPE, signature);
  }

  private Response answer(PackFile file, String type, boolean signature) {
    return signature ? PacksApi.download(key.signature(file).orElseThrow(PacksApi::noKey),
        MediaType.APPLICATION_OCTET_STREAM) : PacksApi.download(file, type);
  }
}
