package rungbook.tree.reader;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.system.Vocabulary;
import rungbook.tree.NameRef;
import rungbook.tree.Setting;
import rungbook.tree.Symptoms;

/** Reads what the customer sees from the front matter of a tree. */
public final class SymptomsReader {

  static final Code COMPLAINT_CONTRADICTION = Code.of("complaint-contradiction");

  /** The lines that say it, in the order in which people write them. */
  public static final List<String> KEYS = List.of("call", "seen", "not seen", "not all seen");

  private static final Pattern OR = Pattern.compile("\\s+or\\s+");

  private final Document document;
  private final SystemNames names;
  private final Problems problems;

  private SymptomsReader(Document document, Optional<Vocabulary> system, Problems problems) {
    this.document = document;
    this.names = new SystemNames(system, document.source(), problems);
    this.problems = problems;
  }

  /** Empty if the text has none of the lines; a name that the system does not have is left out. */
  static Optional<Symptoms> read(Document document, Optional<Vocabulary> system, Problems problems) {
    return new SymptomsReader(document, system, problems).read();
  }

  private Optional<Symptoms> read() {
    Optional<Entry> first = document.front().stream().filter(entry -> KEYS.stream().anyMatch(entry::is)).findFirst();
    return first.map(entry -> {
      List<NameRef> seen = sights("seen");
      List<NameRef> notSeen = sights("not seen");
      inspect(seen, notSeen);
      return new Symptoms(call(), seen, notSeen, sights("not all seen"), entry.keySpan());
    });
  }

  private List<Symptoms.Called> call() {
    var byControl = new HashMap<String, NameRef>();
    var call = new ArrayList<Symptoms.Called>();
    for (NameRef name : items("call")) {
      called(name).ifPresent(called -> {
        NameRef before = byControl.putIfAbsent(called.control(), name);
        if (before == null) {
          call.add(called);
        } else {
          report(before, name, "call: ", "call: ");
        }
      });
    }
    return call;
  }

  /** {@code thermostat cooling}, or {@code fan auto or on}. */
  private Optional<Symptoms.Called> called(NameRef name) {
    String[] parts = OR.split(name.text());
    Optional<Setting> first = names.setting(parts[0], name.span());
    return first.map(setting -> {
      var positions = new LinkedHashSet<>(List.of(setting.position()));
      for (String part : List.of(parts).subList(1, parts.length)) {
        names.setting(setting.control() + " " + part, name.span()).ifPresent(other -> positions.add(other.position()));
      }
      return new Symptoms.Called(setting.control(), List.copyOf(positions));
    });
  }

  private List<NameRef> sights(String key) {
    return items(key).stream().filter(names::sight).toList();
  }

  private List<NameRef> items(String key) {
    return document.front(key).map(entry -> StepParts.items(entry, document.source(), problems)).orElse(List.of());
  }

  private void inspect(List<NameRef> seen, List<NameRef> notSeen) {
    Map<String, NameRef> bySight = new HashMap<>();
    seen.forEach(sight -> bySight.putIfAbsent(sight.key(), sight));
    notSeen.forEach(sight -> Optional.ofNullable(bySight.get(sight.key()))
        .ifPresent(first -> report(first, sight, "seen: ", "not seen: ")));
    values(seen);
  }

  /** A sight shows one of its values at a time. */
  private void values(List<NameRef> seen) {
    Map<String, NameRef> bySight = new HashMap<>();
    seen.forEach(value -> names.sightWithValue(value).ifPresent(sight -> {
      NameRef first = bySight.putIfAbsent(sight.key(), value);
      if (first != null && !first.key().equals(value.key())) {
        report(first, value, "seen: ", "seen: ");
      }
    }));
  }

  private void report(NameRef first, NameRef second, String key, String secondKey) {
    problems.add(Problem.at(COMPLAINT_CONTRADICTION, document.source(), second.span())
        .with("first", key + first.text()).with("second", secondKey + second.text()));
  }
}
