package rungbook.pack.path;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import rungbook.action.ActionKind;
import rungbook.action.DeedWords;
import rungbook.action.EquipmentCondition;
import rungbook.action.StateChange;
import rungbook.pack.path.Instructions.Instruction;
import rungbook.tree.Action;

/**
 * Which actions the author's own words already say: an instruction has a verb for the action, and right after it the
 * action's object. Whatever is in doubt counts as not said, so that the pack says it.
 */
public final class SaidDeeds {

  private static final Set<String> PREPOSITIONS = Set.of("on", "off", "from", "to", "at", "for", "in", "into", "out",
      "by", "with", "over", "under", "through", "beside", "between", "across", "against");
  private static final Set<String> TO_A_POSITION = Set.of("to", "back", "at", "again");
  private static final List<String> TRY_IT = List.of("try", "it");
  private static final Set<String> LOCK_AND_TAG = Set.of("lock", "tag");
  private static final int TWICE = 2;
  private static final int PARTICLE_WITHIN = 5;
  private static final int NOWHERE = -1;

  private final List<Instruction> told = new ArrayList<>();
  private final String html;

  /**
   * @param title the step's title, which may be an instruction too
   * @param html the step's prose, safe
   */
  public SaidDeeds(String title, String html) {
    told.addAll(Instructions.of(title));
    told.addAll(Instructions.of(html));
    this.html = html;
  }

  /** Of an action that is done twice, the second time counts as not said. */
  public boolean has(List<Action> actions, int number) {
    Action action = actions.get(number);
    return actions.subList(0, number).stream().noneMatch(earlier -> earlier.kind() == action.kind()
        && earlier.key().equals(action.key()) && earlier.changes().equals(action.changes())) && has(actions, action);
  }

  private boolean has(List<Action> actions, Action action) {
    if (action.kind().begins(EquipmentCondition.PROVED_DEAD)) {
      return provesTheMeterTwice() && isTold("read", "test", "measure");
    }
    if (action.kind().begins(EquipmentCondition.METER_PROVED)) {
      return isNamed(action.thing().text());
    }
    return action.changes().stream().filter(StateChange.SetPosition.class::isInstance)
        .map(StateChange.SetPosition.class::cast).findFirst().map(set -> isSet(action.kind(), set))
        .orElseGet(() -> isSaid(actions, action));
  }

  /** By all of its words: {@code a live outlet, or a proving unit}. */
  private boolean isNamed(String source) {
    List<String> said = Instructions.sentences(html).stream().flatMap(List::stream).toList();
    return NamedObject.stems(said).containsAll(NamedObject.stems(Instructions.words(source).stream()
        .filter(word -> !word.equals("or") && !NamedObject.isDeterminer(word)).toList()));
  }

  /** Before and after. */
  private boolean provesTheMeterTwice() {
    NamedObject meter = new NamedObject("meter", true);
    List<String> forms = DeedWords.of(ActionKind.beginning(EquipmentCondition.METER_PROVED)).get(0);
    return told.stream().filter(one -> forms.stream().anyMatch(form -> says(one, form, meter))).count() >= TWICE;
  }

  private boolean isTold(String... verbs) {
    return told.stream().anyMatch(one -> List.of(verbs).contains(one.words().get(0)));
  }

  /** The object has to be said with each part of the action where the step does the same to something else. */
  private boolean isSaid(List<Action> actions, Action action) {
    NamedObject object = object(actions, action.key());
    boolean alone = actions.stream().filter(other -> other.kind() == action.kind()).count() == 1;
    List<List<String>> parts = DeedWords.of(action.kind());
    return parts.stream().allMatch(forms -> told.stream().anyMatch(one -> forms.stream()
        .anyMatch(form -> says(one, form, object)
            || (alone && !forms.equals(parts.get(0)) && isSaidAlone(action, one, form))))
        || (alone && isTried(action, object)));
  }

  /** {@code Lock it}, where the step locks one thing; how a proof is read needs no object. */
  private static boolean isSaidAlone(Action action, Instruction one, String form) {
    List<String> words = one.words();
    return words.get(0).equals(form.split(" ", -1)[0]) && words.containsAll(List.of(form.split(" ", -1)))
        && (words.size() == 1 || words.contains("it") || !action.kind().begins(EquipmentCondition.ISOLATED));
  }

  /** Only a switch that was turned off is tried, so that {@code Try it} means the step's only one. */
  private boolean isTried(Action action, NamedObject object) {
    return action.kind().begins(EquipmentCondition.TRIED)
        && Instructions.sentences(html).stream().anyMatch(object::isIn)
        && told.stream().anyMatch(one -> one.words().size() > 1 && one.words().subList(0, 2).equals(TRY_IT));
  }

  private static NamedObject object(List<Action> actions, String name) {
    NamedObject object = new NamedObject(name, true);
    boolean alone = actions.stream().filter(other -> !other.key().equals(name))
        .noneMatch(other -> new NamedObject(other.key(), true).noun().equals(object.noun()));
    return alone ? object : new NamedObject(name, false);
  }

  /** @param form a verb, or a verb and the word that goes with it: right after it, or after the object */
  private static boolean says(Instruction one, String form, NamedObject object) {
    List<String> words = one.words();
    String[] parts = form.split(" ", -1);
    if (!words.get(0).equals(parts[0])) {
      return false;
    }
    String with = parts.length > 1 ? parts[1] : "";
    int from = afterVerbs(words);
    boolean isWith = with.isEmpty();
    while (from < words.size() && !isWith
        && (words.get(from).equals(with) || isDeterminer(words, from) || isPutOn(words, from, with))) {
      isWith = words.get(from).equals(with);
      from++;
    }
    // after tape, bypass, lock or tag, what it is put on or taken from
    boolean thing = isWith && !with.isEmpty() && !PREPOSITIONS.contains(with) && !with.equals("back");
    int end = end(one, isWith ? from : afterVerbs(words), object, thing);
    return end >= 0 && (isWith || words.subList(end, Math.min(words.size(), end + PARTICLE_WITHIN)).contains(with));
  }

  /** {@code Put your lock and tag on it} puts both on. */
  private static boolean isPutOn(List<String> words, int at, String with) {
    return LOCK_AND_TAG.contains(with) && LOCK_AND_TAG.contains(words.get(at));
  }

  private static boolean isDeterminer(List<String> words, int at) {
    return NamedObject.isDeterminer(words.get(at));
  }

  /** After {@code lock and tag}. */
  private static int afterVerbs(List<String> words) {
    return words.size() > 2 && words.get(1).equals("and") && !isDeterminer(words, 2) ? 3 : 1;
  }

  /** Where the object ends in the list of things after a verb; negative if it is not there. */
  private static int end(Instruction one, int from, NamedObject object, boolean throughPrepositions) {
    List<String> words = one.words();
    for (int at = from; at < words.size(); at++) {
      int end = object.endAt(words, at);
      if (end >= 0) {
        return end;
      }
      if (words.get(at).equals("it") && object.isIn(one.before())) {
        return at + 1;
      }
      boolean another = words.get(at).equals("and") && at + 1 < words.size() && !isDeterminer(words, at + 1)
          && !(throughPrepositions && at == from && LOCK_AND_TAG.contains(words.get(at + 1)))
          && object.endAt(words, at + 1) < 0;
      if (another || (!throughPrepositions && PREPOSITIONS.contains(words.get(at)))) {
        return NOWHERE;
      }
    }
    return NOWHERE;
  }

  /** {@code Set the thermostat to off and the fan to auto}, or {@code Call for cooling}. */
  private boolean isSet(ActionKind kind, StateChange.SetPosition set) {
    NamedObject control = new NamedObject(set.control(), true);
    List<String> position = NamedObject.stems(Instructions.words(set.position()));
    return told.stream().anyMatch(one -> {
      boolean verb = DeedWords.of(kind).get(0).contains(one.words().get(0));
      return IntStream.range(verb ? 1 : 0, verb ? one.words().size() : 1)
          .anyMatch(at -> isPutTo(position, one.words(), control(one, control, at), verb))
          || (isCall(one) && isPutTo(position, one.words(), 2, true));
    });
  }

  private static boolean isCall(Instruction one) {
    return one.words().size() > 2 && one.words().subList(0, 2).equals(List.of("call", "for"));
  }

  /** Where the name of a control ends, or a pronoun for it; negative if none begins there. */
  private static int control(Instruction one, NamedObject control, int at) {
    boolean it = one.words().get(at).equals("it") && control.isIn(one.before());
    return it ? at + 1 : control.endAt(one.words(), at);
  }

  /** @param goesOn whether more may be said; {@code Thermostat off} is an instruction only by itself */
  private static boolean isPutTo(List<String> position, List<String> words, int end, boolean goesOn) {
    int to = end;
    while (to >= 0 && to < words.size() && TO_A_POSITION.contains(words.get(to))) {
      to++;
    }
    return to >= 0 && to + position.size() <= words.size() && (goesOn || to + position.size() == words.size())
        && NamedObject.stems(words.subList(to, to + position.size())).equals(position);
  }
}
