import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;

/** Fetches a page and says how large it is; fails unless it is there. For machines without curl. */
final class Fetch {

  private Fetch() {}

  public static void main(String[] arguments) throws IOException, InterruptedException {
    var request = HttpRequest.newBuilder(URI.create(arguments[0])).build();
    HttpResponse<String> response = HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
    System.out.println(arguments[0] + ": " + response.statusCode() + ", " + response.body().length() + " characters");
    System.exit(response.statusCode() == 200 ? 0 : 1);
  }
}
