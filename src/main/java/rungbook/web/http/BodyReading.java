package rungbook.web.http;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException.Reference;
import com.fasterxml.jackson.databind.JsonMappingException;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.ext.Provider;
import jakarta.ws.rs.ext.ReaderInterceptor;
import jakarta.ws.rs.ext.ReaderInterceptorContext;
import java.io.IOException;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;

/** Reads every body, and says what is wrong with one that cannot be read. No body arrives as null. */
@Provider
class BodyReading implements ReaderInterceptor {
  private static final String HINT = "send what /api/openapi describes";
  private static final long JSON_SECONDS = 30;
  private static final long IMPORT_SECONDS = 300;
  private final CurrentVertxRequest current;

  BodyReading(CurrentVertxRequest current) {
    this.current = current;
  }

  @Override
  public Object aroundReadFrom(ReaderInterceptorContext context) {
    long most = current.getCurrent().<Long>get(BodyLimits.ROUTE_LIMIT);
    var seconds = most == BodyLimits.IMPORT_BYTES ? IMPORT_SECONDS : JSON_SECONDS;
    var deadlineNanos = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
    context.setInputStream(new LimitedBody(context.getInputStream(), most, deadlineNanos));
    try {
      var body = context.proceed();
      if (body == null) {
        throw ProblemException.badRequest("the request has no body, or one that is `null`", HINT);
      }
      return body;
    } catch (WebApplicationException wrapped) {
      throw wrapped.getCause() instanceof JsonProcessingException json ? unreadable(json) : wrapped;
    } catch (JsonProcessingException json) {
      throw unreadable(json);
    } catch (LimitedBody.Unread unread) {
      throw unread.problem();
    } catch (IOException broken) {
      throw ProblemException.badRequest("the request's body ended before it was complete", "send it again");
    }
  }

  private static ProblemException unreadable(JsonProcessingException json) {
    var path = json instanceof JsonMappingException mapping ? path(mapping) : "";
    var at = json.getLocation();
    var place = at == null ? "" : " at line " + at.getLineNr() + ", column " + at.getColumnNr();
    return path.isEmpty()
        ? ProblemException.badRequest("the body is not the JSON that is asked for: it cannot be read" + place, HINT)
        : ProblemException.badRequest("`" + path + "` in the body is not of the kind that is asked for", HINT);
  }

  private static String path(JsonMappingException mapping) {
    return mapping.getPath().stream().map(Reference::getFieldName).filter(Objects::nonNull)
        .collect(Collectors.joining("."));
  }
}
