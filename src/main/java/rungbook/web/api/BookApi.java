package rungbook.web.api;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jspecify.annotations.Nullable;
import rungbook.pack.LeftOut;
import rungbook.pack.Pack;
import rungbook.pack.PackFile;
import rungbook.pack.book.Book;
import rungbook.web.service.CheckedLibrary;
import rungbook.web.service.CompanyKey;
import rungbook.web.service.CompiledLibrary;
import rungbook.web.service.PackService;

/** The library as a book, for readers that open books but not pages. */
@Path("/api/book")
@Tag(name = "packs", description = "Trees as self-contained files to carry")
class BookApi {
  private final CompiledLibrary library;
  private final PackService packs;
  private final CompanyKey key;
  private volatile @Nullable Made made;

  // the packs' digests say all that is in the chapters, so the same digests are the same book
  private record Made(List<String> digests, List<LeftOut> leftOut, PackFile file) {
    boolean isOf(List<String> digests, List<LeftOut> leftOut) {
      return this.digests.equals(digests) && this.leftOut.equals(leftOut);
    }
  }

  BookApi(CompiledLibrary library, PackService packs, CompanyKey key) {
    this.library = library;
    this.packs = packs;
    this.key = key;
  }

  @GET
  @Produces({Book.MEDIA_TYPE, MediaType.APPLICATION_OCTET_STREAM})
  @Operation(summary = "Every tree without errors, as one EPUB 3 book",
      description = "Trees with errors are left out; its title page names them and says why; "
          + "with `signature=true` the 64 bytes of its signature instead, if the server has a key")
  public Response book(@QueryParam("signature") boolean signature) {
    var file = file(library.checked());
    return signature ? PacksApi.download(key.signature(file).orElseThrow(PacksApi::noKey),
        MediaType.APPLICATION_OCTET_STREAM) : PacksApi.download(file, Book.MEDIA_TYPE);
  }

  private PackFile file(CheckedLibrary checked) {
    var digests = packs.all(checked).stream().map(Pack::digest).toList();
    var leftOut = packs.leftOut(checked);
    var known = made;
    if (known == null || !known.isOf(digests, leftOut)) {
      known = new Made(digests, leftOut, new PackFile("trees" + Book.ENDING, packs.book(checked).bytes()));
      made = known;
    }
    return known.file();
  }
}
