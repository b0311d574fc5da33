package rungbook.web;

import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipException;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import rungbook.store.DiskFull;
import rungbook.store.Refused;
import rungbook.web.Trouble.Report;

/** Answers trouble: a page for people, problem+json (RFC 9457) for programs. */
class Troubles {
  private static final Logger LOG = Logger.getLogger("rungbook");
  private static final MediaType PROBLEM_JSON = new MediaType("application", "problem+json");

  @ServerExceptionMapper
  Response trouble(Trouble trouble, UriInfo uri, HttpHeaders headers) {
    return answer(trouble.report(), uri, headers);
  }

  @ServerExceptionMapper
  Response refused(Refused refused, UriInfo uri, HttpHeaders headers) {
    return answer(Trouble.of(refused).report(), uri, headers);
  }

  @ServerExceptionMapper
  Response badZip(ZipException bad, UriInfo uri, HttpHeaders headers) {
    return answer(Trouble.badRequest(bad.getMessage(), "choose a zip made of a library's folder").report(), uri, headers);
  }

  @ServerExceptionMapper
  Response nothingThere(NotFoundException missing, UriInfo uri, HttpHeaders headers) {
    return answer(Trouble.notFound("`" + uri.getPath() + "` leads nowhere", "start from the library").report(), uri, headers);
  }

  @ServerExceptionMapper
  Response refusedByProtocol(WebApplicationException refused, UriInfo uri, HttpHeaders headers) {
    var status = refused.getResponse().getStatus();
    return answer(Trouble.of(status, "This request cannot be read", String.valueOf(refused.getMessage()),
        "compare it with /api/openapi").report(), uri, headers);
  }

  @ServerExceptionMapper
  Response ownMistake(RuntimeException unforeseen, UriInfo uri, HttpHeaders headers) {
    if (DiskFull.isReason(unforeseen)) {
      LOG.error("the disk that holds the library is full");
      return answer(Trouble.diskFull().report(), uri, headers);
    }
    LOG.error("failed at " + uri.getPath(), unforeseen);
    return answer(Trouble.of(500, "Rungbook failed", "Nothing was changed by this request",
        "try again; the program's log says what failed").report(), uri, headers);
  }

  private static Response answer(Report report, UriInfo uri, HttpHeaders headers) {
    var wantsPage = !uri.getPath().startsWith("/api") && headers.getAcceptableMediaTypes().contains(MediaType.TEXT_HTML_TYPE);
    var answer = Response.status(report.status());
    return wantsPage
        ? answer.type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8")).entity(Pages.trouble(report).render()).build()
        : answer.type(PROBLEM_JSON).entity(members(report)).build();
  }

  private static Map<String, Object> members(Report report) {
    var members = new LinkedHashMap<String, Object>();
    members.put("type", "about:blank");
    members.put("title", report.title());
    members.put("status", report.status());
    members.put("detail", report.detail());
    members.put("hint", report.hint());
    members.putAll(report.more());
    return members;
  }
}
