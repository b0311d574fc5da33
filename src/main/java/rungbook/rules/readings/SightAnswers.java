package rungbook.rules.readings;

import java.util.List;
import java.util.Set;
import java.util.Optional;
import java.util.stream.Stream;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.source.Code;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.system.Names;
import rungbook.system.Vocabulary;
import rungbook.system.sight.SightLookup;
import rungbook.tree.Answer;
import rungbook.tree.NameRef;
import rungbook.tree.Step;
import rungbook.tree.Way;

/**
 * A check looks at a sight of the system by its name, where the sight is, and answers with its values; it measures what
 * the system states where that is measured.
 */
public final class SightAnswers implements Rule {

  static final Code SIGHT_ELSEWHERE = Code.of("sight-elsewhere");
  static final Code SIGHT_MISSPELLED = Code.of("sight-misspelled");

  @Override
  public List<Code> codes() {
    return List.of(SIGHT_ELSEWHERE, SIGHT_MISSPELLED, SightLookup.UNKNOWN_VALUE);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    context.tree().system().ifPresent(system -> {
      for (Step step : context.tree().steps()) {
        if (step instanceof Step.SenseCheck check && check.sense() != Step.Sense.ASK && !system.sights().isEmpty()) {
          inspect(check, system, out);
        } else if (step instanceof Step.MeterCheck check) {
          check.stated().map(name -> system.quantities().get(Names.key(name)))
              .ifPresent(one -> inspectPlace(check, one.name(), check.quantitySpan(), one.locations(), system, out));
        }
      }
    });
  }

  private static void inspect(Step.SenseCheck check, Vocabulary system, Problems out) {
    for (int i = 0; i < check.things().size(); i++) {
      NameRef thing = check.things().get(i);
      Optional<Vocabulary.Sight> sight = system.sight(thing.key());
      if (sight.isPresent()) {
        inspectPlace(check, thing.text(), thing.span(), sight.get().locations(), system, out);
        inspectValues(check, i, sight.get(), out);
      } else {
        Nearest.to(thing.text(), names(system)).ifPresent(near -> out.add(Problem
            .at(SIGHT_MISSPELLED, check.source(), thing.span()).with("name", thing.text()).with("system", system.id())
            .near(thing.text(), Optional.of(near))));
      }
    }
  }

  private static List<String> names(Vocabulary system) {
    return Stream.concat(system.sights().values().stream().map(Vocabulary.Sight::name), system.sightNames().stream())
        .toList();
  }

  private static void inspectPlace(Step.Check check, String name, Span span, Set<String> locations, Vocabulary system,
      Problems out) {
    check.at().filter(place -> system.locations().containsKey(place.key()))
        .filter(place -> !locations.isEmpty() && !locations.contains(place.key()))
        .ifPresent(place -> out.add(Problem.at(SIGHT_ELSEWHERE, check.source(), span)
            .with("name", name).with("place", place.text())
            .with("places", String.join(", ", locations.stream().map(system::locationName).sorted().toList()))));
  }

  /** A check of one value, {@code look: status light steady}, is answered with yes and no. */
  private static void inspectValues(Step.SenseCheck check, int thing, Vocabulary.Sight sight, Problems out) {
    if (sight.values().isEmpty() || !check.things().get(thing).key().equals(sight.key())) {
      return;
    }
    List<String> values = sight.values().stream().map(Names::key).toList();
    for (Way way : check.ways()) {
      if (way.answer() instanceof Answer.Words words && thing < words.words().size()) {
        String word = words.words().get(thing);
        if (!word.equals(Answer.Words.ANY) && !values.contains(Names.key(word))) {
          out.add(SightLookup.unknownValue(sight, word, way.answerSpan(), check.source()));
        }
      }
    }
  }
}
