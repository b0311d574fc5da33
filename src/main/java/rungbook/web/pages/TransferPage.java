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
import rungbook.store.document.ImportBatch;
import rungbook.store.document.LibraryArchive;
import rungbook.store.document.Save;
import rungbook.web.http.AuthorCookie;
import rungbook.web.http.ProblemException;
import rungbook.web.service.Importer;

/** Imports a folder or zip of Markdown, and exports the library. */
@Path("/transfer")
@Produces(MediaType.TEXT_HTML)
class TransferPage {
  private final Importer importer;

  TransferPage(Importer importer) {
    this.importer = importer;
  }

  /** @param done what an import did; null before one */
  record View(String author, Importer.@Nullable Report done) {}

  @CheckedTemplate(basePath = "")
  static final class Templates {
    private Templates() {}

    static native TemplateInstance transfer(View transfer);
  }

  @GET
  public TemplateInstance show(@CookieParam(AuthorCookie.NAME) @DefaultValue("") String author) {
    return Templates.transfer(new View(AuthorCookie.name(author), null));
  }

  @POST
  public TemplateInstance bring(@RestForm String author, @RestForm("files") List<FileUpload> files) throws IOException {
    var name = Save.author(author);
    var chosen = files.stream().filter(file -> file.fileName() != null && !file.fileName().isBlank()).toList();
    if (chosen.isEmpty()) {
      throw ProblemException.badRequest("no file was chosen", "choose a zip, Markdown files, or a folder");
    }
    return Templates.transfer(new View(name, importer.bring(read(chosen), name)));
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
