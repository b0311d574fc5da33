package rungbook.web.api;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.ByteArrayOutputStream;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import rungbook.pack.LeftOut;
import rungbook.pack.LibraryFolder;
import rungbook.pack.Pack;
import rungbook.pack.PackFile;
import rungbook.store.document.ZipWriter;
import rungbook.text.UrlPath;
import rungbook.web.http.ProblemException;
import rungbook.web.service.CompiledLibrary;
import rungbook.web.service.PackService;
import rungbook.web.service.Requests;

/** Packs: trees as files to carry. A tree with errors has no pack. */
@Path("/api/packs")
@Tag(name = "packs", description = "Trees as self-contained files to carry")
class PacksApi {
  private final CompiledLibrary library;
  private final PackService packs;
  private volatile Zipped zipped = new Zipped(List.of(), List.of(), zipOf(LibraryFolder.of(List.of())));

  // the digests say all that is in the packs, so the same digests are the same zip
  private record Zipped(List<String> digests, List<LeftOut> leftOut, byte[] zip) {
    boolean isOf(List<String> digests, List<LeftOut> leftOut) {
      return this.digests.equals(digests) && this.leftOut.equals(leftOut);
    }
  }

  PacksApi(CompiledLibrary library, PackService packs) {
    this.library = library;
    this.packs = packs;
  }

  @GET
  @Path("{path:.+}")
  @Produces(MediaType.TEXT_HTML)
  @Operation(summary = "A tree's pack, one HTML file",
      description = "Under its lasting name, so that links between packs in a folder hold; "
          + "with `digest=true` under a name that tells this edition from others")
  public Response pack(String path, @QueryParam("digest") boolean digest) {
    var at = Requests.path(path);
    var checked = library.with(at);
    var tree = checked.tree(at)
        .orElseThrow(
            () -> ProblemException.notFound("`" + path + "` is no tree in the library", "choose one from the library"));
    if (!tree.isSound()) {
      throw ProblemException.of(409, "No pack", "`" + path + "` has errors, and a tree with errors has no pack",
          "fix what its page lists");
    }
    var pack = packs.of(tree, checked);
    return download(digest ? pack.alone() : pack.inFolder(), "text/html; charset=UTF-8");
  }

  @GET
  @Produces("application/zip")
  @Operation(summary = "Every pack and an index, as a zip",
      description = "Trees with errors are left out; the index names them and says why")
  public Response packs() {
    var checked = library.checked();
    return download(new PackFile("packs.zip", zip(packs.all(checked), packs.leftOut(checked))), "application/zip");
  }

  private byte[] zip(List<Pack> all, List<LeftOut> leftOut) {
    var digests = all.stream().map(Pack::digest).toList();
    var known = zipped;
    if (!known.isOf(digests, leftOut)) {
      known = new Zipped(digests, leftOut, zipOf(LibraryFolder.of(all, leftOut)));
      zipped = known;
    }
    return known.zip();
  }

  private static byte[] zipOf(List<PackFile> files) {
    var bytes = new ByteArrayOutputStream();
    try (var zip = new ZipWriter(bytes)) {
      files.forEach(file -> zip.add(file.name(), file.bytes()));
    }
    return bytes.toByteArray();
  }

  private static Response download(PackFile file, String type) {
    return Response.ok(file.bytes(), type)
        .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename*=UTF-8''" + UrlPath.part(file.name())).build();
  }
}
