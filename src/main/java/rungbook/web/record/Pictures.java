package rungbook.web.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Joins what was read off QR pictures, in any order. */
final class Pictures {
  private static final String PRACTICE = "practice";

  /** What a page writes before the text of each picture. */
  private static final Pattern HEAD = Pattern.compile("RUNGBOOK (\\d{1,3})/(\\d{1,3}) ([0-9a-f]{4}|" + PRACTICE + "):");

  private record Part(int number, int count, String of, String text) {
    static Part of(MatchResult head, String after, boolean isLast) {
      var of = head.group(3);
      return new Part(Integer.parseInt(head.group(1)), Integer.parseInt(head.group(2)), of,
          of.equals(PRACTICE) ? withOwnSpaces(after, isLast) : after.stripTrailing());
    }

    /**
     * A pack never cuts beside a space. A practice page does, so a space at the end of a line is the text's own, but
     * for one that leads to the next picture on the same line.
     */
    private static String withOwnSpaces(String after, boolean isLast) {
      int words = after.stripTrailing().length();
      int end = words;
      while (end < after.length() && after.charAt(end) == ' ') {
        end++;
      }
      boolean isApart = isLast || end < after.length();
      return after.substring(0, isApart ? end : Math.max(words, end - 1));
    }
  }

  private Pictures() {}

  /**
   * Empty if there is none.
   *
   * @throws RecordFault if one is missing, or they do not belong together
   */
  static String joined(String text) {
    var parts = parts(text);
    if (parts.isEmpty()) {
      return "";
    }
    var first = parts.get(0);
    if (!parts.stream().allMatch(part -> part.of().equals(first.of()) && part.count() == first.count())) {
      throw new RecordFault("these QR pictures are of more than one record, or of two states of one",
          "show the pictures again, and paste those of one record at a time");
    }
    return joined(byNumber(parts), first.count());
  }

  private static List<Part> parts(String text) {
    var heads = HEAD.matcher(text).results().toList();
    var parts = new ArrayList<Part>();
    for (int i = 0; i < heads.size(); i++) {
      boolean isLast = i + 1 == heads.size();
      int end = isLast ? text.length() : heads.get(i + 1).start();
      parts.add(Part.of(heads.get(i), text.substring(heads.get(i).end(), end), isLast));
    }
    return parts;
  }

  private static Map<Integer, String> byNumber(List<Part> parts) {
    var byNumber = new TreeMap<Integer, String>();
    for (var part : parts) {
      var before = byNumber.put(part.number(), part.text());
      if (before != null && !before.equals(part.text())) {
        throw new RecordFault("QR picture " + part.number() + " is there twice, and not the same",
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
