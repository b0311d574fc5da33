package rungbook.rules.flow;

import java.util.Arrays;
import java.util.List;
import rungbook.tree.Deed;
import rungbook.tree.Quantity;
import rungbook.tree.Step;

/**
 * What each deed of each step does to the facts, as a short program, so that names are looked up once only. A deed is a
 * number; a step's own follow each other. Looking for a short with an ohmmeter counts as a deed of its check.
 */
final class Deeds {

  private static final int SET = 0;
  private static final int CLEAR = 1;
  private static final int CLEAR_ROW = 2;

  private final Facts facts;
  private final int[] firstDeed;
  private int[] firstCode = new int[16];
  private int[] code = new int[32];
  private int deeds;
  private int codes;

  private Deeds(Facts facts, int steps) {
    this.facts = facts;
    this.firstDeed = new int[steps + 1];
  }

  static Deeds of(List<Step> steps, Facts facts) {
    Deeds program = new Deeds(facts, steps.size());
    for (int step = 0; step < steps.size(); step++) {
      program.add(steps.get(step));
      program.firstDeed[step + 1] = program.deeds;
    }
    return program;
  }

  int count(int step) {
    return firstDeed[step + 1] - firstDeed[step];
  }

  /** Does the deeds of a step from one up to another, counted from its first. */
  void apply(int step, int from, int to, Marks marks) {
    int end = firstCode[firstDeed[step] + to];
    for (int i = firstCode[firstDeed[step] + from]; i < end; i++) {
      int fact = code[i] >> 2;
      switch (code[i] & 3) {
        case SET -> marks.set(fact);
        case CLEAR -> marks.clear(fact);
        default -> marks.clear(fact, code[++i]);
      }
    }
  }

  private void add(Step step) {
    if (step instanceof Step.MeterCheck check && check.quantity() == Quantity.OHMS) {
      clear(Fact.FUSE_REPLACED);
      endDeed();
    }
    for (Deed deed : step.deeds()) {
      add(deed, step);
      endDeed();
    }
  }

  private void add(Deed deed, Step step) {
    String key = deed.thing().key();
    switch (deed.verb()) {
      case SET -> deed.setting().ifPresent(setting -> {
        int first = facts.firstPosition(setting.control());
        if (first != Facts.NONE) {
          clearRow(first, first + facts.positions(setting.control()));
          set(facts.at(setting));
        }
      });
      case OPEN -> set(facts.of(Fact.OPEN, key));
      case CLOSE -> clear(facts.of(Fact.OPEN, key));
      case BYPASS -> set(facts.of(Fact.BYPASSED, key));
      case ISOLATE -> {
        set(facts.of(Fact.ISOLATED, key));
        set(facts.of(Fact.OFF_UNTAGGED, key));
        set(facts.of(Fact.POWER_OFF));
      }
      case TAG_OUT -> {
        set(facts.of(Fact.ISOLATED, key));
        clear(facts.of(Fact.OFF_UNTAGGED, key));
        set(facts.of(Fact.POWER_OFF));
        set(facts.of(Fact.TAGGED_OUT));
      }
      case PROVE_DEAD -> prove(step);
      case DISCHARGE -> discharge(key);
      case DISCONNECT -> {
        touch(step, key);
        set(facts.of(Fact.DISCONNECTED, key));
        clear(Fact.FUSE_REPLACED);
      }
      case RECONNECT -> {
        touch(step, key);
        clear(facts.of(Fact.DISCONNECTED, key));
      }
      case REPLACE -> {
        touch(step, key);
        set(facts.of(Fact.FUSE_REPLACED, key));
      }
      case RESTORE -> restore(key);
      case KNOWN_SOURCE -> { }
    }
  }

  /** Touched is taken for dead from here on: where it was not, that is reported once, at the first touch. */
  private void touch(Step step, String key) {
    set(facts.of(Fact.POWER_OFF));
    prove(step);
    if (facts.isCapacitor(key)) {
      discharge(key);
    }
  }

  private void prove(Step step) {
    set(facts.of(Fact.PROVED_ANYWHERE));
    set(facts.of(Fact.PROVED_AT, Facts.place(step)));
  }

  private void discharge(String key) {
    set(facts.of(Fact.DISCHARGED_ANY));
    set(facts.of(Fact.DISCHARGED, key));
  }

  private void restore(String key) {
    clear(facts.of(Fact.BYPASSED, key));
    clear(facts.of(Fact.OPEN, key));
    clear(facts.of(Fact.DISCONNECTED, key));
    clear(facts.of(Fact.ISOLATED, key));
    clear(facts.of(Fact.OFF_UNTAGGED, key));
    if (facts.isSource(key)) {
      clearRow(facts.first(Fact.POWER_OFF), facts.end(Fact.DISCHARGED));
    }
  }

  private void clear(Fact kind) {
    clearRow(facts.first(kind), facts.end(kind));
  }

  private void set(int fact) {
    if (fact != Facts.NONE) {
      put(fact << 2 | SET);
    }
  }

  private void clear(int fact) {
    if (fact != Facts.NONE) {
      put(fact << 2 | CLEAR);
    }
  }

  private void clearRow(int from, int to) {
    if (from < to) {
      put(from << 2 | CLEAR_ROW);
      put(to);
    }
  }

  private void put(int word) {
    code = codes == code.length ? Arrays.copyOf(code, 2 * codes) : code;
    code[codes++] = word;
  }

  private void endDeed() {
    deeds++;
    firstCode = deeds == firstCode.length ? Arrays.copyOf(firstCode, 2 * deeds) : firstCode;
    firstCode[deeds] = codes;
  }
}
