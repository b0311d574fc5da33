package rungbook.web.views;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import rungbook.action.ActionKind;
import rungbook.action.ActionObject;
import rungbook.library.Library;
import rungbook.source.Codes;
import rungbook.system.Names;
import rungbook.system.Quantity;
import rungbook.system.Vocabulary;
import rungbook.tree.Step;
import rungbook.tree.reader.StepKeys;
import rungbook.tree.reader.SystemNames;
import rungbook.web.service.TreeEntry;

/**
 * The words that a tree may use, as an editor offers them.
 *
 * @param keys the lines that each kind of block may have
 * @param values the values that a key may have, by key
 * @param trees the other trees of the library, by file name and title
 */
public record Completions(Map<String, Collection<String>> keys, Map<String, Collection<String>> values,
    Map<String, String> trees) {

  private static final Set<String> YES = Set.of("yes");

  /** @param system a system's name as front matter writes it; empty for none */
  public static Completions of(Library library, String system) {
    var values = new LinkedHashMap<String, Collection<String>>();
    values.put("system", ids(library, "shared/systems/"));
    values.put("meter", ids(library, "shared/meters/"));
    values.put("fragment", ids(library, "shared/fragments/"));
    values.put("cautions", spoken(ids(library, "shared/cautions/")));
    values.put("who", spoken(ids(library, "shared/qualifications/")));
    values.put("measure", Quantity.allWords());
    values.put("quiet", Codes.silenceable());
    values.put("result", Step.Result.allWords());
    values.put("healthy", YES);
    values.put(Step.Check.AGAIN, YES);
    values.put("evacuate", YES);
    Optional.ofNullable(library.shared().systems().get(Names.key(system))).ifPresent(found -> addSystem(found, values));
    return new Completions(lines(), values, trees(library));
  }

  private static void addSystem(Vocabulary system, Map<String, Collection<String>> values) {
    for (ActionKind kind : ActionKind.values()) {
      values.put(kind.words(), new TreeSet<>(kind.object().names(system)));
    }
    values.put("measure", SystemNames.measurable(Optional.of(system)));
    values.put("guarded", new TreeSet<>(ActionObject.PANEL.names(system)));
    values.put("at", system.locations().values().stream().map(Vocabulary.Location::name).sorted().toList());
    values.put("leads", new TreeSet<>(ActionObject.POINT.names(system)));
    values.put("with", new TreeSet<>(ActionObject.SETTING.names(system)));
    values.put("fault", new TreeSet<>(system.faults().values()));
    values.put("call", new TreeSet<>(ActionObject.SETTING.names(system)));
    Stream.of("look", "listen", "feel", "seen", "not seen", "not all seen")
        .forEach(sense -> values.put(sense, sights(system, !Step.Sense.named(sense).isPresent())));
  }

  /** A check looks at a sight and answers with its value; a complaint names both. */
  private static List<String> sights(Vocabulary system, boolean isWithValue) {
    return isWithValue ? system.sightNames().stream().sorted().toList()
        : system.sights().values().stream().map(Vocabulary.Sight::name).sorted().toList();
  }

  private static Map<String, Collection<String>> lines() {
    var keys = new LinkedHashMap<String, Collection<String>>();
    Stream.of("check", "task", "finding", "end", "take", "exit")
        .forEach(kind -> keys.put(kind, new TreeSet<>(StepKeys.of(kind))));
    return keys;
  }

  private static List<String> ids(Library library, String folder) {
    return List.copyOf(library.text().in(folder).keySet());
  }

  private static List<String> spoken(List<String> ids) {
    return ids.stream().map(id -> id.replace('-', ' ')).toList();
  }

  private static Map<String, String> trees(Library library) {
    var trees = new LinkedHashMap<String, String>();
    library.trees().forEach(tree -> trees.put(tree.tree().id(), TreeEntry.title(tree)));
    return trees;
  }
}
