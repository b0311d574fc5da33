package rungbook.rules.cautions;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import rungbook.rules.flow.FactTable;
import rungbook.source.Span;
import rungbook.tree.NameRef;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** What a check looks at, listens for, feels or smells that needs a caution. Each method answers for one step. */
final class HazardousSights {

  /** Words in the names of what is hot while it is looked at. */
  private static final List<String> HOT = List.of("burners", "heater", "element", "combustion", "reversing valve");

  private static final List<String> WET = List.of("float switch", "drain pan");

  private static final List<String> BESIDE_FAN = List.of("fan", "compressor");

  private final Tree tree;
  private final HazardousPlaces places;

  HazardousSights(Tree tree, HazardousPlaces places) {
    this.tree = tree;
    this.places = places;
  }

  Optional<Span> flame(int step) {
    return sight(step, thing -> thing.equals("burners") || thing.startsWith("burners "));
  }

  Optional<Span> water(int step) {
    return sight(step, thing -> WET.stream().anyMatch(wet -> thing.endsWith(" " + wet)));
  }

  Optional<Span> hot(int step) {
    return sight(step, thing -> has(thing, HOT));
  }

  /** Whoever wants to see or hear whether an outdoor unit runs stands at its fan. */
  Optional<Span> besideFan(int step) {
    return places.hasMotor("fan", FactTable.place(tree.steps().get(step)))
        ? sight(step, thing -> has(thing, BESIDE_FAN)) : Optional.empty();
  }

  /** With the power on, whoever pulls a filter from its slot reaches toward the blower. */
  Optional<Span> filter(int step) {
    return places.isPowerOff(step) ? Optional.empty() : sight(step, thing -> thing.startsWith("air filter"));
  }

  Optional<Span> smellingGas(int step) {
    return tree.steps().get(step) instanceof Step.SenseCheck check && check.sense() == Step.Sense.SMELL
        ? sight(step, "gas"::equals) : Optional.empty();
  }

  private Optional<Span> sight(int step, Predicate<String> hazardous) {
    return tree.steps().get(step) instanceof Step.SenseCheck check ? check.things().stream()
        .filter(thing -> hazardous.test(thing.key())).findFirst().map(NameRef::span) : Optional.empty();
  }

  private static boolean has(String thing, List<String> words) {
    return words.stream().anyMatch(word -> (" " + thing + " ").contains(" " + word + " "));
  }
}
