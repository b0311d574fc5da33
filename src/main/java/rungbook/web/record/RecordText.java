package rungbook.web.record;

import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Finds a record's JSON in what somebody pasted or uploaded: a file, a message, or what was read off QR pictures. */
public final class RecordText {
  private static final String BEGINNING = "{\"format\":\"" + RecordReader.FORMAT + "\"";

  /** What a pack writes before the text of each picture. */
  private static final Pattern PART = Pattern.compile(
      "RUNGBOOK (\\d{1,3})/(\\d{1,3}) ([0-9a-f]{4}):(.*?)(?=\\s*RUNGBOOK \\d{1,3}/\\d{1,3} [0-9a-f]{4}:|\\s*\\z)",
      Pattern.DOTALL);

  /** Mail programs break long lines, which no text in JSON has. */
  private static final Pattern LINE_END = Pattern.compile("\\s*\\R\\s*");

  private RecordText() {}

  /** @throws RecordFault if there is none, more than one, or a part of it is missing */
  public static String json(String text) {
    var given = text.startsWith("\ufeff") ? text.substring(1).strip() : text.strip();
    if (given.isEmpty()) {
      throw new RecordFault("there is no text", "paste a record, or choose its file");
    }
    var at = given.indexOf(BEGINNING);
    if (at >= 0) {
      return LINE_END.matcher(given.substring(at, end(given, at))).replaceAll(" ");
    }
    return given.startsWith("{") ? given : joined(given);
  }

  /** After the bracket that closes the first one: what a mail program adds is not the record's. */
  private static int end(String text, int from) {
    int depth = 0;
    boolean isText = false;
    for (int i = from; i < text.length(); i++) {
      char c = text.charAt(i);
      if (isText && c == '\\') {
        i++;
      } else if (c == '"') {
        isText = !isText;
      } else if (!isText && (c == '{' || c == '}')) {
        depth += c == '{' ? 1 : -1;
        if (depth == 0) {
          return i + 1;
        }
      }
    }
    return text.length();
  }

  private static String joined(String text) {
    var parts = PART.matcher(text).results().toList();
    if (parts.isEmpty()) {
      throw new RecordFault("there is no field record in this text",
          "paste all of it: the line that begins with " + BEGINNING + ", or what was read off each QR picture");
    }
    var first = parts.get(0);
    boolean isOne = parts.stream()
        .allMatch(part -> part.group(3).equals(first.group(3)) && part.group(2).equals(first.group(2)));
    if (!isOne) {
      throw new RecordFault("these QR pictures are of more than one record, or of two states of one",
          "show the pictures again, and paste those of one record at a time");
    }
    return joined(byNumber(parts), Integer.parseInt(first.group(2)));
  }

  private static Map<Integer, String> byNumber(Iterable<MatchResult> parts) {
    var byNumber = new TreeMap<Integer, String>();
    for (var part : parts) {
      var number = Integer.parseInt(part.group(1));
      var before = byNumber.put(number, part.group(4));
      if (before != null && !before.equals(part.group(4))) {
        throw new RecordFault("QR picture " + number + " is there twice, and not the same",
            "the record was changed in between: scan all of its pictures again");
      }
    }
    return byNumber;
  }

  private static String joined(Map<Integer, String> parts, int count) {
    var missing = IntStream.rangeClosed(1, count).filter(number -> !parts.containsKey(number))
        .mapToObj(String::valueOf).collect(Collectors.joining(", "));
    if (!missing.isEmpty()) {
      throw new RecordFault("of " + count + " QR pictures these are missing: " + missing, "scan them, and paste all");
    }
    return String.join("", parts.values());
  }
}
