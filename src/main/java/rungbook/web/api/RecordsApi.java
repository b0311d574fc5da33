package rungbook.web.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import rungbook.web.record.RecordEntry;
import rungbook.web.service.ReceivedRecords;

/** Field records, as packs write them, and results of practice, as practice pages write them. */
@Path("/api/records")
@Tag(name = "records", description = "What was read and found in the field, as packs write it")
@Produces(MediaType.APPLICATION_JSON)
class RecordsApi {
  private final ReceivedRecords records;

  RecordsApi(ReceivedRecords records) {
    this.records = records;
  }

  /** @param received the text as it came: JSON, a message with the JSON in it, or what was read off QR pictures */
  record Kept(RecordEntry entry, String received) {}

  @POST
  @Consumes({MediaType.APPLICATION_JSON, MediaType.TEXT_PLAIN})
  @Operation(summary = "Keep a field record, or results of practice",
      description = "The JSON of a record, which fits /schema/field-record.json, or of results, which fits "
          + "/schema/practice-results.json; or as text/plain what a page shares, or what was read off its QR pictures, "
          + "in any order. A record of an unknown or withdrawn pack, or of another edition of a practice page, is kept "
          + "and flagged. The same text again is answered 200 and changes nothing")
  public Response keep(String record) {
    var received = records.receive(record);
    var answer = received.isNew() ? Response.created(URI.create("/api/records/" + received.entry().id()))
        : Response.ok();
    return answer.entity(received.entry()).build();
  }

  @GET
  @Operation(summary = "The newest state of each of the last 200 records and results",
      description = "With `tree=ID` those that followed this tree")
  public List<RecordEntry> list(@QueryParam("tree") @DefaultValue("") String tree) {
    return tree.isEmpty() ? records.newest() : records.newest(tree);
  }

  @GET
  @Path("{id}")
  @Operation(summary = "A record or results, and the text as it was received")
  public Kept read(long id) {
    var view = records.view(id);
    return new Kept(view.entry(), view.received());
  }
}
