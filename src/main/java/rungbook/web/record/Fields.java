package rungbook.web.record;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;

/** The fields of a JSON object, with their place in the whole, for words on what is wrong. */
record Fields(JsonNode node, String place) {

  private static final ObjectMapper JSON = JsonMapper.builder().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
      .build();

  private static final Pattern TIME = Pattern.compile("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(\\.\\d+)?Z");

  private static final String HINT = "send the record as the pack wrote it; docs/field-record.md has its form";

  Fields {
    if (!node.isObject()) {
      throw wrong(place, "is no object");
    }
  }

  /** The whole of a text. */
  static Fields of(String json) {
    try {
      return new Fields(JSON.readTree(json), "");
    } catch (JsonProcessingException broken) {
      var at = broken.getLocation();
      throw new RecordFault("the record's JSON cannot be read at character " + (at == null ? 0 : at.getColumnNr()),
          "it was cut off or changed on the way: share it again");
    }
  }

  /** Refuses a field with any other name. */
  void onlyKnown(Set<String> known, String whole) {
    node.fieldNames().forEachRemaining(name -> {
      if (!known.contains(name)) {
        throw wrong(at(name), "is no field of " + whole);
      }
    });
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

  int count(String name, int least, int most) {
    return count(required(name), at(name), least, most);
  }

  static int count(JsonNode value, String place, int least, int most) {
    if (!value.isIntegralNumber() || !value.canConvertToInt() || value.intValue() < least || value.intValue() > most) {
      throw wrong(place, "is no whole number from " + least + " to " + most);
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

  double number(String name, double most) {
    return number(required(name), at(name), most);
  }

  static double number(JsonNode value, String place, double most) {
    if (!value.isNumber() || !(value.doubleValue() >= 0 && value.doubleValue() <= most)) {
      throw wrong(place, "is no number from 0 to " + (long) most);
    }
    return value.doubleValue();
  }

  boolean yesOrNo(String name) {
    var value = required(name);
    if (!value.isBoolean()) {
      throw wrong(at(name), "is neither true nor false");
    }
    return value.booleanValue();
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

  /** Of so many characters. */
  String boundedText(String name, int least, int most) {
    return boundedText(required(name), at(name), least, most);
  }

  static String boundedText(JsonNode value, String place, int least, int most) {
    var text = text(value, place);
    int length = text.codePointCount(0, text.length());
    if (length < least || length > most) {
      throw wrong(place, "has " + length + " characters, and " + least + " to " + most + " are read");
    }
    return text;
  }

  /** A list of so many texts, each of so many characters at most. */
  List<String> boundedTexts(String name, int least, int most, int mostLength) {
    return boundedTexts(required(name), at(name), least, most, mostLength);
  }

  static List<String> boundedTexts(JsonNode list, String place, int least, int most, int mostLength) {
    return boundedEach(list, place, least, most, item -> boundedText(item.node(), item.place(), 0, mostLength));
  }

  <T> List<T> boundedEach(String name, int least, int most, Function<Item, T> read) {
    return boundedEach(required(name), at(name), least, most, read);
  }

  private static <T> List<T> boundedEach(JsonNode list, String place, int least, int most, Function<Item, T> read) {
    if (list.isArray() && list.size() > most) {
      throw wrong(place, "has " + list.size() + " entries, and at most " + most + " are read");
    }
    return each(list, place, least, read);
  }
}
