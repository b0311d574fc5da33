package rungbook.action;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import rungbook.system.Vocabulary;
import rungbook.system.Vocabulary.Control;
import rungbook.system.Vocabulary.Location;
import rungbook.system.Vocabulary.Part;
import rungbook.system.Vocabulary.Point;
import rungbook.system.Vocabulary.Role;

/** The names that an action is offered, and what each action and condition means; written from docs/tree-text.md. */
class ActionNamesTest {

  private static final Vocabulary SYSTEM = new Vocabulary("sample", "Sample",
      Map.of("furnace", new Location("furnace", Optional.of("blower door"), false)),
      Map.of("y", new Point("Y", Set.of("furnace"), OptionalDouble.empty())),
      Map.of("thermostat",
          new Control("thermostat", Role.SELECTOR, List.of("cooling", "off"), Set.of("furnace"), false),
          "disconnect", new Control("disconnect", Role.ISOLATOR, List.of(), Set.of("furnace"), false),
          "door switch", new Control("door switch", Role.INTERLOCK, List.of(), Set.of("furnace"), false)),
      Map.of(),
      Map.of("contactor", new Part("contactor", "relay"), "flux bank", new Part("flux bank", "capacitor"),
          "rollout", new Part("rollout", "switch", false, true), "burner box", new Part("burner box", "assembly")),
      Map.of(), Map.of("burner box", Set.of("rollout")));

  private static final Vocabulary WITHOUT_PARTS = new Vocabulary("sample", "Sample", Map.of(), Map.of(), Map.of(),
      Map.of(), Map.of(), Map.of(), Map.of());

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {"SETTING | control and position | thermostat cooling, thermostat off",
      "PANEL | panel | blower door", "INTERLOCK | switch to bypass | door switch",
      "POWER_SWITCH | power switch | disconnect", "RESETTABLE | part with manual reset | burner box, rollout",
      "POINT | point | Y", "CAPACITOR | capacitor | flux bank",
      "THING | part, point or control | Y, burner box, contactor, disconnect, door switch, flux bank, rollout,"
          + " thermostat",
      "RESTORABLE | panel, part, point or control | Y, blower door, burner box, contactor, disconnect, door switch,"
          + " flux bank, rollout, thermostat",
      "FREE_TEXT | point | Y"})
  void offersTheNamesOfItsKind(ActionObject object, String words, String names) {
    assertEquals(words, object.words());
    assertEquals(names, String.join(", ", new TreeSet<>(object.names(SYSTEM))));
  }

  @ParameterizedTest
  @EnumSource(ActionObject.class)
  void acceptsWhatItOffers(ActionObject object) {
    for (String name : object.names(SYSTEM)) {
      assertTrue(object.accepts(SYSTEM, name.toLowerCase(Locale.ROOT)), name);
    }
  }

  @ParameterizedTest
  @CsvSource({"CAPACITOR, true", "THING, true", "RESTORABLE, true", "PANEL, false", "INTERLOCK, false",
      "POWER_SWITCH, false", "POINT, false"})
  void systemWithoutPartsTakesAnyPart(ActionObject object, boolean any) {
    assertEquals(any, object.accepts(WITHOUT_PARTS, "anything"));
  }

  @Test
  void partIsOfTheKindThatTheSystemSays() {
    assertTrue(ObjectNames.isPart(Optional.of(SYSTEM), "flux bank", "capacitor"));
    assertFalse(ObjectNames.isPart(Optional.of(SYSTEM), "contactor", "capacitor"));
  }

  @Test
  void partThatNoSystemKnowsIsOfTheKindInItsName() {
    for (Optional<Vocabulary> system : List.of(Optional.of(SYSTEM), Optional.<Vocabulary>empty())) {
      assertTrue(ObjectNames.isPart(system, "start capacitor", "capacitor"));
      assertFalse(ObjectNames.isPart(system, "start relay", "capacitor"));
    }
  }

  @Test
  void changesReadings() {
    assertEquals(Set.of("set", "bypass", "isolate", "discharge", "disconnect", "reconnect", "replace", "repair",
        "reset", "restore", "tag out"), actions(ActionKind::changesReadings));
    assertEquals(Set.of("BYPASSED", "ISOLATED", "DISCONNECTED", "REPLACED", "RESET", "REPAIRED", "DISCHARGED"),
        conditions(EquipmentCondition::changesReadings));
  }

  @Test
  void needsSuccess() {
    assertEquals(Set.of("discharge", "prove dead", "try"), actions(ActionKind::needsSuccess));
    assertEquals(Set.of("PROVED_DEAD", "DISCHARGED", "TRIED"), conditions(EquipmentCondition::needsSuccess));
  }

  @Test
  void goesBehindThePanel() {
    assertEquals(Set.of("BYPASSED", "DISCONNECTED", "REPLACED", "DISCHARGED", "PROVED_DEAD", "TOUCHED"),
        conditions(EquipmentCondition::isBehindPanel));
  }

  @Test
  void eachConditionBeginsAndEndsByItsActions() {
    assertEquals(Set.of("restore"), actions(kind -> kind.ends(EquipmentCondition.BYPASSED)));
    assertEquals(Set.of("close", "restore"), actions(kind -> kind.ends(EquipmentCondition.OPEN)));
    assertEquals(Set.of("reconnect", "restore"), actions(kind -> kind.ends(EquipmentCondition.DISCONNECTED)));
    assertEquals(Set.of("isolate", "tag out"), actions(kind -> kind.begins(EquipmentCondition.ISOLATED)));
    assertEquals(Set.of("tag out"), actions(kind -> kind.begins(EquipmentCondition.TAGGED_OUT)));
  }

  @Test
  void instructionOfRestoreGoesByTheRole() {
    assertEquals("Remove the bypass", ActionKind.RESTORE.instruction(Optional.of(Role.INTERLOCK)));
    assertEquals("Remove the lock and turn on", ActionKind.RESTORE.instruction(Optional.of(Role.ISOLATOR)));
    assertEquals("Put back", ActionKind.RESTORE.instruction(Optional.of(Role.SELECTOR)));
    assertEquals("Put back", ActionKind.RESTORE.instruction(Optional.empty()));
    assertEquals("Replace", ActionKind.REPLACE.instruction(Optional.of(Role.INTERLOCK)));
  }

  private static Set<String> actions(Predicate<ActionKind> chosen) {
    return Arrays.stream(ActionKind.values()).filter(chosen).map(ActionKind::words).collect(Collectors.toSet());
  }

  private static Set<String> conditions(Predicate<EquipmentCondition> chosen) {
    return Arrays.stream(EquipmentCondition.values()).filter(chosen).map(Enum::name).collect(Collectors.toSet());
  }
}
