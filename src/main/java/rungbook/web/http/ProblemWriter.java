package rungbook.web.http;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.inject.Singleton;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rungbook.web.http.ProblemException.Report;

/**
 * Writes what is wrong with a request: a page for a browser, {@code application/problem+json} (RFC 9457) for a program.
 */
@Singleton
class ProblemWriter {
  static final String PROBLEM_JSON = "application/problem+json";
  private static final String PAGE = "text/html;charset=UTF-8";
  private final ObjectMapper json;

  ProblemWriter(ObjectMapper json) {
    this.json = json;
  }

  @CheckedTemplate(basePath = "")
  static final class Templates {
    private Templates() {}

    static native TemplateInstance problem(Report report);
  }

  record Body(String mediaType, String text) {}

  /**
   * @param path the path of the request; a program's addresses always get JSON
   * @param accept the request's {@code Accept} header; null without one
   */
  Body write(Report report, String path, @Nullable String accept) {
    var wantsPage = !isApi(path) && Accepts.of(accept).prefersPage();
    return wantsPage ? new Body(PAGE, Templates.problem(report).render())
        : new Body(PROBLEM_JSON, text(members(report)));
  }

  private static boolean isApi(String path) {
    return path.equals("/api") || path.startsWith("/api/");
  }

  private String text(Map<String, Object> members) {
    try {
      return json.writeValueAsString(members);
    } catch (JsonProcessingException everyMemberIsARecord) {
      throw new IllegalStateException(everyMemberIsARecord);
    }
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
