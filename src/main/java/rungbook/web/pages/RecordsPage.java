package rungbook.web.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.util.List;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jspecify.annotations.Nullable;
import rungbook.web.http.ProblemException;
import rungbook.web.record.PracticeView;
import rungbook.web.record.RecordEntry;
import rungbook.web.record.RecordView;
import rungbook.web.service.ReceivedRecords;

/** Field records and results of practice: taken in, listed, and one of them. */
@Path("/records")
@Produces(MediaType.TEXT_HTML)
class RecordsPage {
  private final ReceivedRecords records;

  RecordsPage(ReceivedRecords records) {
    this.records = records;
  }

  /** @param tree only the records of this one; empty for all */
  record ListView(String tree, List<RecordEntry> records) {}

  @CheckedTemplate(basePath = "")
  static final class Templates {
    private Templates() {}

    static native TemplateInstance records(ListView list);

    static native TemplateInstance record(RecordView view);

    static native TemplateInstance practice(PracticeView view);
  }

  @GET
  public TemplateInstance list(@QueryParam("tree") @DefaultValue("") String tree) {
    return Templates.records(new ListView(tree, tree.isEmpty() ? records.newest() : records.newest(tree)));
  }

  @GET
  @Path("{id}")
  public TemplateInstance show(long id) {
    var view = records.view(id);
    return view instanceof RecordView record ? Templates.record(record) : Templates.practice((PracticeView) view);
  }

  @POST
  public Response take(@RestForm FileUpload file, @RestForm String text) throws IOException {
    var received = records.receive(content(file, text));
    return Response.seeOther(URI.create(received.entry().href())).build();
  }

  private static String content(@Nullable FileUpload file, @Nullable String text) throws IOException {
    if (file == null || file.fileName() == null || file.fileName().isBlank()) {
      return text == null ? "" : text;
    }
    try {
      return Files.readString(file.uploadedFile());
    } catch (MalformedInputException binary) {
      throw ProblemException.badRequest("`" + file.fileName() + "` is no text",
          "choose the file that the pack or practice page saved: it ends in `.txt` or `.json`");
    }
  }
}
