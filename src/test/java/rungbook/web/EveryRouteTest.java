package rungbook.web;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every route that the program has, with bodies that it did not ask for. */
@Tag("server")
@QuarkusTest
class EveryRouteTest {
  @TestHTTPResource("/")
  URL server;

  private static final Map<String, String> BODIES = Map.ofEntries(Map.entry("empty", ""), Map.entry("null", "null"),
      Map.entry("an empty object", "{}"), Map.entry("an array", "[]"), Map.entry("a number", "7"),
      Map.entry("a string", "\"x\""),
      Map.entry("cut off", "{\"path\":\"trees/a.md\",\"te"), Map.entry("not JSON", "<a>b</a>"),
      Map.entry("two values", "{}{}"),
      Map.entry("null members",
          "{\"path\":null,\"text\":null,\"author\":null,\"basedOn\":null,\"line\":null,\"message\":null}"),
      Map.entry("members of other types",
          "{\"path\":[],\"text\":{},\"author\":[1],\"basedOn\":\"x\",\"line\":true,\"message\":{}}"),
      Map.entry("a number for a text",
          "{\"path\":\"trees/a.md\",\"text\":7,\"author\":1,\"basedOn\":0.5,\"line\":1e99}"),
      Map.entry("a NUL", "{\"path\":\"trees/a\\u0000.md\",\"text\":\"\\u0000\",\"author\":\"\\u0000\"}"),
      Map.entry("half a character", "{\"path\":\"trees/a.md\",\"text\":\"\\ud800\",\"author\":\"a\",\"basedOn\":0}"),
      Map.entry("NUL bytes", "\0\0\0\0"), Map.entry("not UTF-8", "\u00ff\u00fe{"),
      Map.entry("deep", "[".repeat(100_000)),
      Map.entry("a deep member", "{\"text\":" + "{\"a\":".repeat(50_000)));
  private static final List<
      String> DOCUMENTS = List.of("trees/no-such.md", "trees/no-cooling-blower-runs.md", "trees/pictures/board.png",
          "nowhere", "trees/%00.md", "trees/%25zz.md", "..%2f..%2fetc%2fpasswd");

  static Stream<Routes.Route> routes() {
    return Routes.all().stream();
  }

  static Stream<Arguments> routesWithBodies() {
    return routes().filter(route -> !route.method().equals("GET"))
        .flatMap(route -> BODIES.entrySet().stream().map(body -> arguments(route, body.getKey(), body.getValue())));
  }

  @ParameterizedTest(name = "{0}, {1}")
  @MethodSource("routesWithBodies")
  void noBodyIsMoreThanAClientsFault(Routes.Route route, String name, String body) throws IOException {
    for (var mediaType : List.of("application/json", "application/x-www-form-urlencoded", "application/zip",
        "multipart/form-data; boundary=x", "image/png")) {
      var length = body.getBytes(StandardCharsets.ISO_8859_1).length;
      var answer = send(route, route.at("trees/no-such.md"),
          "Content-Type: " + mediaType + "\r\nContent-Length: " + length, body);
      assertNotTheServersFault(route + " with " + name + " as " + mediaType, answer);
    }
  }

  @ParameterizedTest
  @MethodSource("routes")
  void noPathAndNoParameterIsMoreThanAClientsFault(Routes.Route route) throws IOException {
    // without a path in it, the route is the same for all of them
    for (var document : route.path().contains("{path}") ? DOCUMENTS : DOCUMENTS.subList(0, 1)) {
      for (var query : List.of("", "?revision=abc&from=-1&to=99999999999999&line=x&draft=y&before=-3",
          "?revision=0&q=%25zz&system=%00&author=%ff",
          "?from=7&to=-7&folder=..%2f&title=%00a&draft=9&line=-1")) {
        var answer = send(route, route.at(document) + query, "Cookie: rungbook-author=%zz\r\nContent-Length: 0", "");
        assertNotTheServersFault(route + " at " + document + query, answer);
      }
    }
  }

  private String send(Routes.Route route, String address, String headers, String body) throws IOException {
    return RawHttp.send(server.getPort(),
        route.method() + " " + address + " HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\n"
            + headers + "\r\n\r\n" + body);
  }

  private static void assertNotTheServersFault(String what, String answer) {
    assertTrue(answer.matches("(?s)HTTP/1.1 [234].*"), () -> what + " answered " + answer);
    if (answer.startsWith("HTTP/1.1 4")) {
      assertTrue(answer.toLowerCase(Locale.ROOT).contains("content-type: application/problem+json"),
          what + " answered " + answer);
      assertTrue(answer.matches("(?s).*\"detail\":\"[^\"].*\"hint\":\"[^\"].*"), what + " answered " + answer);
    }
  }

  @Test
  void everyRouteOfTheApiIsDescribedByOpenApi() {
    Map<String,
        Map<String, Object>> paths = given().accept("application/json").get("/api/openapi").then().statusCode(200)
            .extract().jsonPath().getMap("paths");
    routes().filter(Routes.Route::isApi)
        .forEach(route -> assertTrue(
            paths.getOrDefault(route.path(), Map.of()).containsKey(route.method().toLowerCase(Locale.ROOT)),
            route.toString()));
  }

  @Test
  void everyRouteOfTheApiIsInTheManual() throws IOException {
    var manual = Files.readString(Path.of("docs/server.md"));
    routes().filter(Routes.Route::isApi).forEach(route -> assertTrue(
        manual.contains("`" + route.method() + " " + route.inTheManual()), route.toString()));
  }
}
