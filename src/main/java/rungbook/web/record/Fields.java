package rungbook.web.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/** The fields of a JSON object, with their place in the whole, for words on what is wrong. */
record Fields(JsonNode node, String place) {

  private static final Pattern TIME = Pattern.compile("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(\\.\\d+)?Z");

  private static final String HINT = "send the record as the pack wrote it; docs/field-record.md has its form";

  Fields {
    if (!node.isObject()) {
      throw wrong(place, "is no object");
    }
  }

  static RecordFault wrong(String place, String what) {
    return new RecordFault("`" + place + "` " + what, HINT);
  }

  private String at(String name) {
    return place.isEmpty() ? name : place + "." + name;
  }

  boolean has(String name) {
    return node.has(name);
  }

  private JsonNode required(String name) {
    var value = node.get(name);
    if (value == null) {
      throw wrong(at(name), "is missing");
    }
    return value;
  }

  String text(String name) {
    return text(required(name), at(name));
  }

  /** Empty if it is not there. */
  String optionalText(String name) {
    return has(name) ? text(name) : "";
  }

  static String text(JsonNode value, String place) {
    if (!value.isTextual()) {
      throw wrong(place, "is no text");
    }
    return value.textValue();
  }

  String text(String name, Pattern form, String what) {
    var text = text(name);
    if (!form.matcher(text).matches()) {
      throw wrong(at(name), "is " + what);
    }
    return text;
  }

  int count(String name, int least) {
    return count(required(name), at(name), least);
  }

  static int count(JsonNode value, String place, int least) {
    if (!value.isIntegralNumber() || !value.canConvertToInt() || value.intValue() < least) {
      throw wrong(place, "is no whole number from " + least);
    }
    return value.intValue();
  }

  double number(String name) {
    var value = required(name);
    if (!value.isNumber() || value.doubleValue() < 0) {
      throw wrong(at(name), "is no number from 0");
    }
    return value.doubleValue();
  }

  Instant time(String name) {
    var text = text(name, TIME, "no time such as 2026-11-30T18:04:31Z");
    try {
      return Instant.parse(text);
    } catch (DateTimeParseException noDay) {
      throw wrong(at(name), "is no time such as 2026-11-30T18:04:31Z");
    }
  }

  Optional<Instant> optionalTime(String name) {
    return has(name) ? Optional.of(time(name)) : Optional.empty();
  }

  Fields object(String name) {
    return new Fields(required(name), at(name));
  }

  List<String> texts(String name) {
    return each(name, 0, item -> text(item.node(), item.place()));
  }

  List<String> optionalTexts(String name) {
    return has(name) ? texts(name) : List.of();
  }

  <T> List<T> objects(String name, int least, Function<Fields, T> read) {
    return each(name, least, item -> read.apply(new Fields(item.node(), item.place())));
  }

  /** A value of a list, and its place. */
  record Item(JsonNode node, String place) {}

  <T> List<T> each(String name, int least, Function<Item, T> read) {
    return each(required(name), at(name), least, read);
  }

  static <T> List<T> each(JsonNode list, String place, int least, Function<Item, T> read) {
    if (!list.isArray() || list.size() < least) {
      throw wrong(place, least == 0 ? "is no list" : "is no list of " + least + " or more");
    }
    var all = new ArrayList<T>();
    for (int i = 0; i < list.size(); i++) {
      all.add(read.apply(new Item(list.get(i), place + "[" + i + "]")));
    }
    return List.copyOf(all);
  }
}
