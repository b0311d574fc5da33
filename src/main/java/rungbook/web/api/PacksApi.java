package rungbook.web.api;

import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import rungbook.pack.LeftOut;
import rungbook.pack.LibraryFolder;
import rungbook.pack.Pack;
import rungbook.pack.PackFile;
import rungbook.pack.practice.PracticePage;
import rungbook.store.document.ZipWriter;
import rungbook.text.UrlPath;
import rungbook.web.http.Asker;
import rungbook.web.http.ProblemException;
import rungbook.web.practice.PracticeService;
import rungbook.web.service.CompanyKey;
import rungbook.web.service.CompiledLibrary;
import rungbook.web.service.PackService;
import rungbook.web.service.ReceivedRecords;
import rungbook.web.service.Requests;

/** Packs: trees as files to carry. A tree with errors has no pack. */
@Path("/api/packs")
@Tag(name = "packs", description = "Trees as self-contained files to carry")
class PacksApi {
  private final CompiledLibrary library;
  private final PackService packs;
  private final CompanyKey key;
  private final ReceivedRecords records;
  private final PracticeService practice;
  private volatile Zipped zipped;

  // the digests say all that is in the packs, so the same digests are the same zip
  private record Zipped(List<String> digests, List<LeftOut> leftOut, List<PracticePage> practice, byte[] zip) {
    boolean isOf(List<String> digests, List<LeftOut> leftOut, List<PracticePage> practice) {
      return this.digests.equals(digests) && this.leftOut.equals(leftOut) && this.practice.equals(practice);
    }
  }

  PacksApi(CompiledLibrary library, PackService packs, CompanyKey key, ReceivedRecords records,
      PracticeService practice) {
    this.library = library;
    this.packs = packs;
    this.key = key;
    this.records = records;
    this.practice = practice;
    this.zipped = zipped(List.of(), List.of(), List.of());
  }

  @GET
  @Path("{path:.+}")
  @Produces({MediaType.TEXT_HTML, MediaType.APPLICATION_OCTET_STREAM})
  @Operation(summary = "A tree's pack, one HTML file",
      description = "Under its lasting name, so that links between packs in a folder hold; "
          + "with `digest=true` under a name that tells this edition from others; "
          + "with `signature=true` the 64 bytes of its signature instead, if the server has a key; "
          + "with `proved=true` it says what the tree was proved on and how much it finds, and waits for that proof")
  public Response pack(String path, @QueryParam("digest") boolean digest,
      @QueryParam("signature") boolean signature, @QueryParam("proved") boolean proved,
      @Context RoutingContext request) {
    var at = Requests.path(path);
    var checked = library.with(at);
    var tree = checked.tree(at)
        .orElseThrow(
            () -> ProblemException.notFound("`" + path + "` is no tree in the library", "choose one from the library"));
    if (!tree.isSound()) {
      throw ProblemException.of(409, "No pack", "`" + path + "` has errors, and a tree with errors has no pack",
          "fix what its page lists");
    }
    var pack = proved ? packs.proved(tree, checked, Asker.of(request)) : packs.of(tree, checked);
    records.handedOut(List.of(pack), checked);
    var file = digest ? pack.alone() : pack.inFolder();
    return signature ? download(key.signature(file).orElseThrow(PacksApi::noKey), MediaType.APPLICATION_OCTET_STREAM)
        : download(file, "text/html; charset=UTF-8");
  }

  @GET
  @Path("public-key")
  @Produces("application/x-pem-file")
  @Operation(summary = "The key that checks this server's signatures, as a PEM file")
  public Response publicKey() {
    var written = key.publicKey().orElseThrow(PacksApi::noKey).written();
    return download(new PackFile("company.pub", written.getBytes(StandardCharsets.US_ASCII)),
        "application/x-pem-file");
  }

  static ProblemException noKey() {
    return ProblemException.notFound("this server has no key to sign packs with",
        "name one in the setting rungbook.signing-key");
  }

  @GET
  @Produces("application/zip")
  @Operation(summary = "Every pack and an index, as a zip",
      description = "Trees with errors are left out; the index names them and says why")
  public Response packs() {
    var checked = library.checked();
    var all = packs.all(checked);
    records.handedOut(all, checked);
    var pages = practice.all(checked.library());
    return download(new PackFile("packs.zip", zip(all, packs.leftOut(checked), pages)), "application/zip");
  }

  private byte[] zip(List<Pack> all, List<LeftOut> leftOut, List<PracticePage> pages) {
    var digests = all.stream().map(Pack::digest).toList();
    var known = zipped;
    if (!known.isOf(digests, leftOut, pages)) {
      known = zipped(all, leftOut, pages);
      zipped = known;
    }
    return known.zip();
  }

  private Zipped zipped(List<Pack> all, List<LeftOut> leftOut, List<PracticePage> pages) {
    return new Zipped(all.stream().map(Pack::digest).toList(), leftOut, pages,
        zipOf(key.signed(LibraryFolder.of(all, leftOut, pages))));
  }

  private static byte[] zipOf(List<PackFile> files) {
    var bytes = new ByteArrayOutputStream();
    try (var zip = new ZipWriter(bytes)) {
      files.forEach(file -> zip.add(file.name(), file.bytes()));
    }
    return bytes.toByteArray();
  }

  static Response download(PackFile file, String type) {
    return Response.ok(file.bytes(), type)
        .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename*=UTF-8''" + UrlPath.part(file.name())).build();
  }
}
