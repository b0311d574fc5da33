package rungbook.web.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jspecify.annotations.Nullable;
import rungbook.pack.signature.PublicSigningKey;
import rungbook.web.http.ProblemException;
import rungbook.web.service.CompanyKey;
import rungbook.web.service.CompiledLibrary;
import rungbook.web.service.PackService;
import rungbook.web.service.TogetherService;
import rungbook.web.views.PackVerdict;

/** Says which pack a file is, whether it was changed, who signed it, and whether it is the newest. */
@Path("/verify")
@Produces(MediaType.TEXT_HTML)
class VerifyPage {
  private final CompiledLibrary library;
  private final PackService packs;
  private final TogetherService together;
  private final CompanyKey key;

  VerifyPage(CompiledLibrary library, PackService packs, TogetherService together, CompanyKey key) {
    this.together = together;
    this.library = library;
    this.packs = packs;
    this.key = key;
  }

  /**
   * @param fingerprint of the server's key; empty if it has none
   * @param verdict of the pack that was sent; null before one
   */
  record View(String fingerprint, @Nullable PackVerdict verdict) {}

  @CheckedTemplate(basePath = "")
  static final class Templates {
    private Templates() {}

    static native TemplateInstance verify(View verify);
  }

  @GET
  public TemplateInstance show() {
    return Templates.verify(view(null));
  }

  @POST
  public TemplateInstance verify(@RestForm FileUpload pack, @RestForm FileUpload signature) throws IOException {
    var file = content(pack).orElseThrow(
        () -> ProblemException.badRequest("no pack was chosen", "choose a pack: a file that ends in `.html`"));
    var checked = library.checked();
    var verdict = new PackVerdict.Question(pack.fileName(), file, content(signature), key.publicKey())
        .against(packs.all(checked), () -> together.page(checked));
    return Templates.verify(view(verdict));
  }

  private View view(@Nullable PackVerdict verdict) {
    return new View(key.publicKey().map(PublicSigningKey::fingerprint).orElse(""), verdict);
  }

  private static Optional<byte[]> content(@Nullable FileUpload upload) throws IOException {
    return upload == null || upload.fileName() == null || upload.fileName().isBlank() ? Optional.empty()
        : Optional.of(Files.readAllBytes(upload.uploadedFile()));
  }
}
