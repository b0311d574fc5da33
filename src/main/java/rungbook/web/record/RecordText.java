package rungbook.web.record;

import java.util.regex.Pattern;

/**
 * Finds the JSON of a record, or of practice results, in what somebody pasted or uploaded: a file, a message, or what
 * was read off QR pictures.
 */
final class RecordText {
  private static final String FORMAT = "{\"format\":\"";
  private static final Pattern BEGINNING = Pattern.compile(Pattern.quote(FORMAT) + "(?:"
      + Pattern.quote(RecordReader.FORMAT) + '|' + Pattern.quote(PracticeReader.FORMAT) + ")\"");

  /** Mail programs break long lines, which no text in JSON has. Looked for once in each run of white space. */
  private static final Pattern LINE_END = Pattern.compile("(?<!\\s)\\s*\\R\\s*");

  private RecordText() {}

  /** @throws RecordFault if there is none, more than one, or a part of it is missing */
  static String json(String text) {
    var given = text.startsWith("\ufeff") ? text.substring(1).strip() : text.strip();
    if (given.isEmpty()) {
      throw new RecordFault("there is no text", "paste a record, or choose its file");
    }
    var beginning = BEGINNING.matcher(given);
    if (beginning.find()) {
      var json = given.substring(beginning.start(), end(given, beginning.start()));
      return LINE_END.matcher(json).replaceAll(" ");
    }
    return given.startsWith("{") ? given : joined(text);
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
    var joined = Pictures.joined(text);
    if (joined.isEmpty()) {
      throw new RecordFault("there is no field record in this text",
          "paste all of it: the line that begins with " + FORMAT + RecordReader.FORMAT + "\" or " + FORMAT
              + PracticeReader.FORMAT + "\", or what was read off each QR picture");
    }
    return joined;
  }
}
