package rungbook.system.reader;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import rungbook.markdown.Entry;
import rungbook.system.Part;

/** The kinds of part, one row each: what a condition may ask about one, and how its line is read. */
@SuppressWarnings("ImmutableEnumChecker") // method references hold nothing
enum PartKind {
  SUPPLY(Asked.NOTHING, PartReader::supply),
  BREAKER(Asked.POSITION, PartReader::fuse),
  FUSE(Asked.POSITION, PartReader::fuse),
  SWITCH(Asked.POSITION, PartReader::contact),
  INTERLOCK(Asked.POSITION, PartReader::contact),
  CONTACT(Asked.POSITION, PartReader::contact),
  CABLE(Asked.NOTHING, PartReader::cable),
  WIRE(Asked.NOTHING, PartReader::wire),
  JOINT(Asked.NOTHING, PartReader::joint),
  TRANSFORMER(Asked.NOTHING, TransformerReader::read),
  COIL(Asked.OPERATION, PartReader::coil),
  MOTOR(Asked.OPERATION, PartReader::motor),
  LOAD(Asked.OPERATION, PartReader::load),
  BOARD(Asked.OPERATION, PartReader::load),
  THERMOSTAT(Asked.OPERATION, PartReader::load),
  INPUT(Asked.OPERATION, PartReader::load),
  HEATER(Asked.OPERATION, PartReader::load),
  CAPACITOR(Asked.NOTHING, PartReader::capacitor),
  STATE(Asked.STATE, PartReader::state);

  /** What a condition may ask about a part. */
  enum Asked {
    NOTHING,
    /** {@code open} or {@code closed}. */
    POSITION,
    /** {@code on} or {@code humming}. */
    OPERATION,
    /** Only {@code on}. */
    STATE
  }

  private static final Map<String, PartKind> BY_WORD = Arrays.stream(values())
      .collect(Collectors.toMap(PartKind::word, kind -> kind));

  private final String word = name().toLowerCase(Locale.ROOT).replace('_', ' ');
  private final Asked asked;
  private final Function<PartLine, Part> reader;

  PartKind(Asked asked, Function<PartLine, Part> reader) {
    this.asked = asked;
    this.reader = reader;
  }

  /** As the text writes it: {@code fuse}. */
  String word() {
    return word;
  }

  Asked asked() {
    return asked;
  }

  Part read(PartLine line) {
    return reader.apply(line);
  }

  /** The kind that a line of {@code parts} names first. */
  static Optional<PartKind> of(Entry entry) {
    return Optional.ofNullable(BY_WORD.get(PartLine.kindWord(entry)));
  }

  static List<String> words() {
    return Arrays.stream(values()).map(PartKind::word).toList();
  }
}
