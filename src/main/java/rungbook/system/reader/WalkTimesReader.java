package rungbook.system.reader;

import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.system.Names;
import rungbook.system.WalkTimes;

/** Reads the walking times from a system's locations. */
public final class WalkTimesReader {

  private static final Pattern WALK = Pattern.compile("walk (\\d+(?:\\.\\d+)?) min");

  private WalkTimesReader() {}

  public static WalkTimes read(Document document) {
    List<Entry> lines = document.blocks("locations").stream().flatMap(block -> block.entries().stream()).toList();
    String start = lines.stream().filter(line -> item(line, "start").isPresent()).map(line -> Names.key(line.key()))
        .findFirst().orElse("");
    var walks = new HashMap<String, WalkTimes.Walk>();
    for (Entry line : lines) {
      String from = item(line, "from ").map(text -> Names.key(text.substring(5))).orElse(start);
      minutes(line).ifPresent(minutes -> walks.put(Names.key(line.key()), new WalkTimes.Walk(from, minutes)));
    }
    return new WalkTimes(start, walks);
  }

  private static Optional<Double> minutes(Entry line) {
    return line.items().stream().map(item -> WALK.matcher(item.text())).filter(Matcher::matches).findFirst()
        .map(match -> Double.parseDouble(match.group(1)));
  }

  private static Optional<String> item(Entry line, String prefix) {
    return line.items().stream().map(Entry.Item::text).filter(text -> text.startsWith(prefix)).findFirst();
  }
}
