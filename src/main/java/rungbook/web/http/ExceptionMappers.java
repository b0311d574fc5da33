package rungbook.web.http;

import jakarta.ws.rs.NotAllowedException;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.Set;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.jboss.resteasy.reactive.server.handlers.FormBodyHandler;
import rungbook.store.DatabaseFile;
import rungbook.store.DiskFull;
import rungbook.store.document.Refused;
import rungbook.store.document.StoreLimits;
import rungbook.web.http.ProblemException.Report;

/** Turns exceptions into problems: a page for people, problem+json (RFC 9457) for programs. */
class ExceptionMappers {
  private static final Logger LOG = Logger.getLogger("rungbook");
  private static final Set<String> SAFE = Set.of("GET", "HEAD", "OPTIONS");
  private final ProblemWriter problems;

  ExceptionMappers(ProblemWriter problems) {
    this.problems = problems;
  }

  @ServerExceptionMapper
  Response problem(ProblemException problem, ContainerRequestContext request) {
    return answer(problem.report(), request).build();
  }

  @ServerExceptionMapper
  Response refused(Refused refused, ContainerRequestContext request) {
    return answer(ProblemException.of(refused).report(), request).build();
  }

  @ServerExceptionMapper
  Response fileGone(DatabaseFile.Gone gone, ContainerRequestContext request) {
    LOG.error(gone.getMessage());
    return answer(ProblemException.fileGone(String.valueOf(gone.getMessage())).report(), request).build();
  }

  // the framework throws it, with a cause, also for a number or a date in the address that cannot be read
  @ServerExceptionMapper
  Response nothingThere(NotFoundException missing, ContainerRequestContext request) {
    var report = missing.getCause() == null
        ? ProblemException.notFound("`" + request.getUriInfo().getPath() + "` leads nowhere", "start from the library")
            .report()
        : ProblemException
            .badRequest("a value in the address is not of the kind asked for", "compare it with /api/openapi").report();
    return answer(report, request).build();
  }

  @ServerExceptionMapper
  Response refusedByProtocol(WebApplicationException refused, ContainerRequestContext request) {
    var status = refused.getResponse().getStatus();
    if (status >= 500) {
      return ownMistake(refused, request);
    }
    var answer = answer(Failures.refused(status), request);
    return refused instanceof NotAllowedException ? answer.allow(refused.getResponse().getAllowedMethods()).build()
        : answer.build();
  }

  @ServerExceptionMapper
  Response ownMistake(Throwable unforeseen, ContainerRequestContext request) {
    if (DiskFull.isReason(unforeseen)) {
      LOG.error("the disk that holds the library is full");
      return answer(ProblemException.diskFull().report(), request).build();
    }
    if (isUnreadForm(unforeseen)) {
      return answer(ProblemException.badRequest("the form cannot be read: " + unforeseen.getMessage(),
          "send it whole; an import takes at most " + StoreLimits.FILES_COUNT + " files, so send more as a zip")
          .report(), request).build();
    }
    LOG.error("failed at " + request.getUriInfo().getPath(), unforeseen);
    return answer(Failures.ownMistake(SAFE.contains(request.getMethod())), request).build();
  }

  // the framework has no type of its own for a form that is cut off or has too many fields
  private static boolean isUnreadForm(Throwable failure) {
    return Arrays.stream(failure.getStackTrace())
        .anyMatch(frame -> frame.getClassName().equals(FormBodyHandler.class.getName()));
  }

  private Response.ResponseBuilder answer(Report report, ContainerRequestContext request) {
    var body = problems.write(report, request.getUriInfo().getPath(), request.getHeaderString(HttpHeaders.ACCEPT));
    return Response.status(report.status()).type(body.mediaType()).entity(body.text());
  }
}
