package rungbook.web.api;

import static io.restassured.RestAssured.given;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.hasSize;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.io.ByteArrayOutputStream;
import java.net.URI;
import java.net.URL;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.store.document.StoreLimits;
import rungbook.store.document.ZipWriter;

/** An import as large as the limits allow, and one file more. */
@Tag("server")
@QuarkusTest
class LargeImportTest {
  /** The server closes a connection on which nothing moves for 45 seconds, also while it works. */
  private static final Duration LONGEST = Duration.ofSeconds(40);
  private static final String ONE_TOO_MANY = "is one too many: an import holds at most 5000 files and 128 MB";
  private static final String BOUNDARY = "the-boundary";

  @TestHTTPResource("/transfer")
  URL transfer;

  @Test
  void aZipOfAsManyFilesAsTheLimitIsImportedInTime() {
    var began = System.nanoTime();
    sendZip(StoreLimits.FILES_COUNT).then().statusCode(200).body("saved", hasSize(StoreLimits.FILES_COUNT));
    assertTrue(System.nanoTime() - began < LONGEST.toNanos(), "took too long");
    sendZip(StoreLimits.FILES_COUNT + 1).then().statusCode(400).body("detail", containsString(ONE_TOO_MANY));
  }

  @Test
  void aFormOfAsManyFilesAsTheLimitIsImportedInTime() throws Exception {
    var began = System.nanoTime();
    var answer = sendForm(StoreLimits.FILES_COUNT);
    assertTrue(answer.statusCode() == 200 && answer.body().contains(StoreLimits.FILES_COUNT + " saved"), answer.body());
    assertTrue(System.nanoTime() - began < LONGEST.toNanos(), "took too long");
    var refused = sendForm(StoreLimits.FILES_COUNT + 1);
    assertTrue(refused.statusCode() == 400 && refused.body().contains(ONE_TOO_MANY), refused.body());
  }

  private static Response sendZip(int files) {
    var bytes = new ByteArrayOutputStream();
    try (var zip = new ZipWriter(bytes)) {
      IntStream.range(0, files).forEach(file -> zip.add("trees/zip-" + file + ".md", text(file).getBytes(UTF_8)));
    }
    return given().contentType("application/zip").body(bytes.toByteArray()).post("/api/import?author=Tobin");
  }

  private HttpResponse<String> sendForm(int files) throws Exception {
    var body = new StringBuilder(part("name=\"author\"", "Tobin"));
    IntStream.range(0, files).forEach(file -> body
        .append(part("name=\"files\"; filename=\"library/trees/form-" + file + ".md\"", text(file))));
    var request = HttpRequest.newBuilder(URI.create(transfer.toString()))
        .header("Content-Type", "multipart/form-data; boundary=" + BOUNDARY)
        .POST(BodyPublishers.ofString(body + "--" + BOUNDARY + "--\r\n")).build();
    return HttpClient.newHttpClient().send(request, BodyHandlers.ofString());
  }

  private static String part(String disposition, String content) {
    return "--" + BOUNDARY + "\r\nContent-Disposition: form-data; " + disposition + "\r\n\r\n" + content + "\r\n";
  }

  private static String text(int file) {
    return "---\ntitle: Imported " + file + "\ncomplaint: x\n---\n\n## Fine\n\n```finding\nhealthy: yes\n```\n";
  }
}
