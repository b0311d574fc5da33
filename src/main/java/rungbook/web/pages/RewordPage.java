package rungbook.web.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.CookieParam;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Optional;
import rungbook.library.mention.Rewording;
import rungbook.web.change.LibraryChanges;
import rungbook.web.change.Preview;
import rungbook.web.http.AuthorCookie;
import rungbook.web.http.ProblemException;

/** Changes words everywhere in the library. */
@Path("/reword")
@Produces(MediaType.TEXT_HTML)
class RewordPage {
  private static final int LONGEST = 200;
  private final LibraryChanges changes;

  RewordPage(LibraryChanges changes) {
    this.changes = changes;
  }

  /** @param preview empty before words are given */
  record View(String words, String others, String author, Optional<Preview> preview) {}

  @CheckedTemplate(basePath = "")
  static final class Templates {
    private Templates() {}

    static native TemplateInstance reword(View reword);
  }

  @GET
  public TemplateInstance show(@QueryParam("words") @DefaultValue("") String words,
      @QueryParam("others") @DefaultValue("") String others,
      @CookieParam(AuthorCookie.NAME) @DefaultValue("") String author) {
    var preview = words.isBlank() ? Optional.<Preview>empty() : Optional.of(changes.preview(plan(words, others)));
    return Templates.reword(new View(words, others, AuthorCookie.name(author), preview));
  }

  @POST
  public Response make(@FormParam("words") @DefaultValue("") String words,
      @FormParam("others") @DefaultValue("") String others, @FormParam("digest") @DefaultValue("") String digest,
      @FormParam("author") String author) {
    changes.make(plan(words, others), digest, author, "Wrote `" + others + "` for `" + words + "` everywhere");
    return Response.seeOther(URI.create("/")).build();
  }

  private static LibraryChanges.Plan plan(String words, String others) {
    if (words.isBlank() || words.length() > LONGEST || others.length() > LONGEST) {
      throw ProblemException.badRequest("words to change are 1 to " + LONGEST + " characters, and so are the new ones",
          "write fewer");
    }
    return now -> Rewording.of(words, others, now);
  }
}
