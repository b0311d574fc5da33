package rungbook.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Requests that a program with a fault in it might send: texts, JSON, zips and addresses, each a few mistakes away
 * from a good one.
 */
final class RandomRequests {
  private static final String[] PIECES = {"\n## A\n", "```", "\n---\n", "- yes: [x](#a)\n", "```check\nlook: x\n```\n",
      "\u0000", "\ud83d\ude00", "\u202e",
      "![x](pictures/board.png)", "[]( ", "&amp;", "* * *\n", "    ", "\t", "20 to 30", "1e999 V", "system: no-such\n",
      "take: open-furnace-live\n", "\"", "\\", "%", "<b>",
      "not not not ", "{", "}", ":", "|a|b|\n|-|-|\n", "0", "-1", "999999999999", "null"};
  private static final List<String> READ = List.of("/", "/?q=%s", "/shared", "/new", "/transfer", "/help", "/tree/%s",
      "/edit/%s", "/edit/%s?draft=%d&line=%d",
      "/history/%s", "/history/%s?from=%d&to=%d&before=%d", "/text/%s", "/new/tree?title=%s&complaint=%s&system=%s",
      "/new/text?folder=%s&title=%s", "/nowhere/%s",
      "/manage/%s", "/manage/%s?name=%s", "/revision/%s?number=%d", "/removed", "/new/copy?from=%s&title=%s",
      "/reword", "/reword?words=%s&others=%s", "/records", "/records?tree=%s", "/records/%d", "/verify",
      "/api/records?tree=%s", "/api/records/%d", "/api/practice/no-%s",
      "/api/library?q=%s", "/api/documents", "/api/documents?under=%s", "/api/documents/%s?revision=%d",
      "/api/files/%s?revision=%d&draft=%d",
      "/api/history/%s?before=%d", "/api/difference/%s?from=%d&to=%d", "/api/drafts/%s", "/api/check/%s", "/api/map/%s",
      "/api/words?system=%s", "/api/reading?system=split-cooling-gas-furnace&at=%s&leads=%s&set=%s&fault=%s",
      "/api/reading?system=%s&meter=%s", "/api/packs/%s?digest=true");
  private static final List<
      String> FORMS = List.of("/manage/rename/%s", "/manage/remove/%s", "/revision/%s", "/reword");
  private static final String[] MEDIA_TYPES = {"application/json", "application/json", "application/json",
      "application/json", "text/plain", "application/zip",
      "application/x-www-form-urlencoded", "multipart/form-data; boundary=b", "image/png", ";;",
      "application/json; charset=utf-16"};
  private static final Pattern FORM = Pattern.compile("/(?:manage|revision|reword)");
  private final Random random;
  private final URI server;
  private final List<String> texts;

  RandomRequests(long seed, URI server) {
    this.random = new Random(seed);
    this.server = server;
    try (var files = Files.walk(Path.of("trees"), 1)) {
      this.texts = files.filter(file -> file.toString().endsWith(".md")).sorted().map(RandomRequests::read).toList();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  HttpRequest next() {
    return switch (random.nextInt(23)) {
      case 0, 1, 2, 3 -> sent("POST", "/api/check", json(written()));
      case 4, 5, 6 -> sent("POST", "/api/preview", json(written()));
      case 7, 8,
          9 -> sent("PUT", "/api/documents/" + path(),
              json("{\"basedOn\":" + random.nextInt(4) + ",\"text\":" + quoted(text())
                  + ",\"author\":" + quoted(word()) + ",\"message\":" + quoted(word()) + "}"));
      case 10 -> sent("DELETE",
          "/api/documents/" + path() + "?basedOn=" + random.nextInt(4) + "&author=" + encoded(word()), new byte[0]);
      case 11 ->
          sent("PUT", "/api/files/trees/pictures/" + encoded(word()) + ".png?author=a&basedOn=" + random.nextInt(3),
              bytes(picture()));
      case 12, 13 -> sent("POST", "/api/import?author=" + encoded(word()), bytes(zip()));
      case 14 -> sent("POST", "/transfer", bytes(multipart()));
      case 15, 16 -> sent("POST", filled(FORMS.get(random.nextInt(FORMS.size()))), bytes(form()));
      case 17 -> sent("POST", "/api/records", bytes(record().getBytes(StandardCharsets.UTF_8)));
      case 18 -> sent(random.nextBoolean() ? "DELETE" : "GET", "/api/drafts/" + random.nextInt(50), new byte[0]);
      default -> sent("GET", filled(READ.get(random.nextInt(READ.size()))), new byte[0]);
    };
  }

  private HttpRequest sent(String method, String address, byte[] body) {
    var type = method.equals("POST") && address.startsWith("/transfer") ? "multipart/form-data; boundary=b"
        : address.startsWith("/api/import") ? "application/zip"
            : FORM.matcher(address).lookingAt() ? "application/x-www-form-urlencoded"
                : random.nextInt(10) > 0 ? "application/json" : MEDIA_TYPES[random.nextInt(MEDIA_TYPES.length)];
    var request = HttpRequest.newBuilder(server.resolve(address)).header("Content-Type", type)
        .header("Accept", address.startsWith("/api") ? "*/*" : "text/html")
        .header("Cookie", "rungbook-author=" + (random.nextBoolean() ? "%zz" : "Tobin"));
    return request.method(method, BodyPublishers.ofByteArray(body)).build();
  }

  private String filled(String address) {
    var filled = address;
    while (filled.contains("%s")) {
      filled = filled.replaceFirst("%s", random.nextInt(3) == 0 ? encoded(word()) : path());
    }
    while (filled.contains("%d")) {
      filled = filled.replaceFirst("%d", random.nextInt(8) == 0 ? "x" : String.valueOf(random.nextInt(9) - 2));
    }
    return filled;
  }

  private String path() {
    return switch (random.nextInt(8)) {
      case 0 -> "trees/" + encoded(word()) + ".md";
      case 1 -> "shared/fragments/" + encoded(word()) + ".md";
      case 2 -> "trees/pictures/board.png";
      case 3 -> encoded(word());
      case 4 -> "shared/systems/heat-pump.md";
      case 5 -> "trees/no-cooling-blower-runs.md";
      default -> "trees/fuzz-" + random.nextInt(6) + ".md";
    };
  }

  private String written() {
    var plain = random.nextInt(4) == 0 ? "trees/no-cooling-blower-runs.md" : "trees/fuzz-" + random.nextInt(6) + ".md";
    return "{\"path\":" + quoted(random.nextInt(8) == 0 ? word() : plain) + ",\"text\":" + quoted(text()) + ",\"line\":"
        + (random.nextInt(300) - 2) + "}";
  }

  private String text() {
    var text = new StringBuilder(texts.get(random.nextInt(texts.size())));
    for (var mistakes = random.nextInt(6); mistakes > 0; mistakes--) {
      var at = random.nextInt(text.length() + 1);
      switch (random.nextInt(4)) {
        case 0 -> text.delete(at, Math.min(text.length(), at + random.nextInt(60)));
        case 1 -> text.insert(at, text.substring(at, Math.min(text.length(), at + random.nextInt(400))));
        case 2 -> text.insert(at, PIECES[random.nextInt(PIECES.length)].repeat(random.nextInt(20) == 0 ? 2_000 : 1));
        default -> text.insert(at, PIECES[random.nextInt(PIECES.length)]);
      }
    }
    return text.toString();
  }

  private String word() {
    return random.nextInt(4) == 0 ? PIECES[random.nextInt(PIECES.length)]
        : Integer.toString(random.nextInt(36 * 36), 36);
  }

  private byte[] json(String good) {
    var json = switch (random.nextInt(12)) {
      case 0 -> "null";
      case 1 -> "{}";
      case 2 -> good.replaceFirst("\"text\":", "\"text\":" + (random.nextBoolean() ? "null,\"x\":" : "[],\"x\":"));
      default -> good;
    };
    return random.nextInt(6) == 0 ? bytes(json.getBytes(StandardCharsets.UTF_8))
        : json.getBytes(StandardCharsets.UTF_8);
  }

  /** The same with some bytes changed or cut off, half of the time. */
  private byte[] bytes(byte[] good) {
    var bytes = random.nextInt(4) == 0 ? java.util.Arrays.copyOf(good, random.nextInt(good.length + 1)) : good.clone();
    for (var mistakes = random.nextInt(4); mistakes > 0 && bytes.length > 0; mistakes--) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return bytes;
  }

  private byte[] picture() {
    return new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n', 0, 0, 0, 13, 'I', 'H', 'D', 'R',
        (byte) random.nextInt(256)};
  }

  private byte[] zip() {
    var bytes = new ByteArrayOutputStream();
    try (var zip = new ZipOutputStream(bytes)) {
      for (var i = random.nextInt(5); i >= 0; i--) {
        zip.putNextEntry(new ZipEntry("library/trees/fuzz-" + i + (random.nextInt(9) == 0 ? ".bin" : ".md")));
        zip.write(text().getBytes(StandardCharsets.UTF_8));
      }
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    return bytes.toByteArray();
  }

  private byte[] form() {
    return ("name=" + encoded(word()) + "&words=" + encoded(word()) + "&others=" + encoded(word()) + "&digest="
        + encoded(word()) + "&number=" + (random.nextInt(5) - 1) + "&basedOn=" + random.nextInt(4)
        + "&author=" + encoded(word()) + "&message=" + encoded(word())).getBytes(StandardCharsets.UTF_8);
  }

  private String record() {
    return "{\"format\":" + quoted(random.nextBoolean() ? "rungbook-record/1" : "rungbook-practice/1") + ",\"id\":"
        + quoted(word()) + ",\"pack\":{\"digest\":" + quoted(word()) + "},\"steps\":[" + random.nextInt(9) + ",{\"at\":"
        + quoted(word()) + "}],\"notes\":" + quoted(text()) + "}";
  }

  private byte[] multipart() {
    var body = new StringBuilder("--b\r\nContent-Disposition: form-data; name=\"author\"\r\n\r\nTobin\r\n");
    for (var i = random.nextInt(4); i >= 0; i--) {
      body.append("--b\r\nContent-Disposition: form-data; name=\"files\"; filename=\"trees/fuzz-").append(i)
          .append(".md\"\r\n\r\n").append(text()).append("\r\n");
    }
    return body.append("--b--\r\n").toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
  }

  private static String quoted(String text) {
    var quoted = new StringBuilder("\"");
    text.chars().forEach(
        c -> quoted.append(c < ' ' || c == '"' || c == '\\' ? String.format("\\u%04x", c) : String.valueOf((char) c)));
    return quoted.append('"').toString();
  }
}
