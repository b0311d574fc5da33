package rungbook.web.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.CookieParam;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jspecify.annotations.Nullable;
import rungbook.pack.LeftOut;
import rungbook.store.document.ImportBatch;
import rungbook.store.document.LibraryArchive;
import rungbook.store.document.Save;
import rungbook.text.InlineCode;
import rungbook.text.UrlPath;
import rungbook.web.http.AuthorCookie;
import rungbook.web.http.ProblemException;
import rungbook.web.service.CheckedLibrary;
import rungbook.web.service.CompiledLibrary;
import rungbook.web.service.Importer;
import rungbook.web.service.PackService;

/** Imports a folder or zip of Markdown, and exports the library. */
@Path("/transfer")
@Produces(MediaType.TEXT_HTML)
class TransferPage {
  private final Importer importer;
  private final CompiledLibrary library;
  private final PackService packs;

  TransferPage(Importer importer, CompiledLibrary library, PackService packs) {
    this.importer = importer;
    this.library = library;
    this.packs = packs;
  }

  /**
   * @param done what an import did; null before one
   * @param leftOut the trees that have no pack
   * @param signed whether the server signs what it hands out
   */
  record View(String author, Importer.@Nullable Report done, CheckedLibrary checked, List<Unpacked> leftOut,
      boolean signed) {}

  record Unpacked(String href, String title, List<InlineCode.Part> why) {
    static Unpacked of(LeftOut tree) {
      return new Unpacked("/tree/" + UrlPath.of(tree.path()), tree.title(), InlineCode.parts(tree.why()));
    }
  }

  @CheckedTemplate(basePath = "")
  static final class Templates {
    private Templates() {}

    static native TemplateInstance transfer(View transfer);
  }

  @GET
  public TemplateInstance show(@CookieParam(AuthorCookie.NAME) @DefaultValue("") String author) {
    return Templates.transfer(view(AuthorCookie.name(author), null));
  }

  @POST
  public TemplateInstance bring(@RestForm String author, @RestForm("files") List<FileUpload> files) throws IOException {
    var name = Save.author(author);
    var chosen = files.stream().filter(file -> file.fileName() != null && !file.fileName().isBlank()).toList();
    if (chosen.isEmpty()) {
      throw ProblemException.badRequest("no file was chosen", "choose a zip, Markdown files, or a folder");
    }
    return Templates.transfer(view(name, importer.bring(read(chosen), name)));
  }

  private View view(String author, Importer.@Nullable Report done) {
    var checked = library.checked();
    return new View(author, done, checked, packs.leftOut(checked).stream().map(Unpacked::of).toList(),
        packs.isSigning());
  }

  private static ImportBatch read(List<FileUpload> chosen) throws IOException {
    var first = chosen.get(0);
    if (chosen.size() == 1 && first.fileName().toLowerCase(Locale.ROOT).endsWith(".zip")) {
      return LibraryArchive.ofZip(first.uploadedFile());
    }
    return LibraryArchive.ofUploads(
        chosen.stream().map(file -> new LibraryArchive.Upload(file.fileName(), file.uploadedFile())).toList());
  }
}
