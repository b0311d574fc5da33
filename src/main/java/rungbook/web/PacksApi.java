package rungbook.web;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import rungbook.pack.LibraryFolder;
import rungbook.pack.PackFile;

/** Trees as files to carry. Only a tree without errors becomes one. */
@Path("/api/packs")
@Tag(name = "packs", description = "Trees as self-contained files to carry")
class PacksApi {
  // zip entries need a time; a fixed one keeps the same library the same bytes
  private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);
  private final Shelf shelf;
  private final Packs packs;

  PacksApi(Shelf shelf, Packs packs) {
    this.shelf = shelf;
    this.packs = packs;
  }

  @GET
  @Path("{path:.+}")
  @Produces(MediaType.TEXT_HTML)
  @Operation(summary = "A tree's pack, one HTML file",
      description = "Under its lasting name, so that links between packs in a folder hold; with `digest=true` under a name that tells this edition from others")
  public Response pack(String path, @QueryParam("digest") boolean digest) {
    var tree = shelf.tree(Texts.path(path))
        .orElseThrow(() -> Trouble.notFound("`" + path + "` is no tree in the library", "choose one from the library"));
    if (!tree.isSound()) {
      throw Trouble.of(409, "No pack", "`" + path + "` has errors, and a tree with errors becomes no pack", "put right what its page lists");
    }
    var pack = packs.of(tree);
    return download(digest ? pack.alone() : pack.inFolder(), "text/html; charset=UTF-8");
  }

  @GET
  @Produces("application/zip")
  @Operation(summary = "Every pack and an index, as a zip", description = "Trees with errors are left out")
  public Response packs() throws IOException {
    return download(new PackFile("packs.zip", zip(LibraryFolder.of(packs.all()))), "application/zip");
  }

  private static byte[] zip(List<PackFile> files) throws IOException {
    var bytes = new ByteArrayOutputStream();
    try (var zip = new ZipOutputStream(bytes)) {
      for (var file : files) {
        var entry = new ZipEntry(file.name());
        entry.setTimeLocal(NO_TIME);
        zip.putNextEntry(entry);
        zip.write(file.bytes());
        zip.closeEntry();
      }
    }
    return bytes.toByteArray();
  }

  private static Response download(PackFile file, String type) {
    var name = URLEncoder.encode(file.name(), StandardCharsets.UTF_8).replace("+", "%20");
    return Response.ok(file.bytes(), type).header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename*=UTF-8''" + name).build();
  }
}
