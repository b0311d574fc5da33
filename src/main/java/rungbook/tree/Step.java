package rungbook.tree;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.system.Names;
import rungbook.system.Quantity;

/** A step of a tree. */
public sealed interface Step {

  /** The maximum number of ways on of one step; more do not fit a screen, and cost time. */
  int MOST_ANSWERS = 100;

  StepHeader header();

  /**
   * A check with a meter.
   *
   * @param stated the name of what the system states outside its circuit; empty for what any system has
   */
  record MeterCheck(
      StepHeader header, Quantity quantity, Span quantitySpan, Optional<String> stated, List<NameRef> leads,
      Optional<Range> expected, Span expectedSpan, List<Setting> presumed)
      implements Check {
    public MeterCheck {
      leads = List.copyOf(leads);
      presumed = List.copyOf(presumed);
    }

    /** What is measured, as the tree writes it: {@code AC volts}, {@code temperature rise}. */
    public String measured() {
      return stated.orElse(quantity.words());
    }
  }

  /** A check by a sense, or a question to somebody. */
  record SenseCheck(StepHeader header, Sense sense, List<NameRef> things, List<Setting> presumed)
      implements Check {
    public SenseCheck {
      things = List.copyOf(things);
      presumed = List.copyOf(presumed);
    }
  }

  /** A step that asks for an answer. */
  sealed interface Check extends Step permits MeterCheck, SenseCheck {
    /** The key of the line that says so. */
    String AGAIN = "again";

    /** Whether it asks again on purpose what is known, because a fault may come and go. */
    default boolean isAgain() {
      return header().block().entry(AGAIN).isPresent();
    }

    /** The settings that the check assumes, from {@code with}. */
    List<Setting> presumed();
  }

  /** Actions, in order. A step that includes a fragment is a task without actions. */
  record Task(StepHeader header, List<Action> actions) implements Step {
    public Task {
      actions = List.copyOf(actions);
    }
  }

  /**
   * A conclusion. Its ways on, if any, lead to the repair.
   *
   * @param guarded panels that stay open, because what is behind them is still live; a person guards them
   */
  record Finding(
      StepHeader header, List<NameRef> faults, boolean healthy, Optional<NameRef> refer, boolean evacuate,
      List<Action> repair, List<NameRef> guarded)
      implements Step {
    public Finding {
      faults = List.copyOf(faults);
      repair = List.copyOf(repair);
      guarded = List.copyOf(guarded);
    }
  }

  /**
   * Where the work ends. It has no ways on.
   *
   * @param guarded as for a finding
   */
  record End(StepHeader header, Result result, Optional<NameRef> refer, List<NameRef> guarded) implements Step {
    public End {
      guarded = List.copyOf(guarded);
    }
  }

  /** How the work ends. */
  enum Result {
    REPAIRED_AND_PROVED, LEFT_OFF_AND_TAGGED, REFERRED;

    private final String words = name().toLowerCase(Locale.ROOT).replace('_', ' ');

    /** As trees write it: {@code repaired and proved}. */
    public String words() {
      return words;
    }

    public static Optional<Result> named(String written) {
      return Arrays.stream(values()).filter(result -> result.words.equals(Names.key(written))).findFirst();
    }

    public static List<String> allWords() {
      return Arrays.stream(values()).map(Result::words).toList();
    }
  }

  /** The sense a check without a meter uses. */
  enum Sense {
    LOOK, LISTEN, SMELL, FEEL, ASK;

    private static final Map<String,
        Sense> BY_WORD = Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Sense::word, sense -> sense));

    private final String word = name().toLowerCase(Locale.ROOT);

    public String word() {
      return word;
    }

    public static Optional<Sense> named(String written) {
      return Optional.ofNullable(BY_WORD.get(written.toLowerCase(Locale.ROOT)));
    }
  }

  /** The actions of this step, in order: a task's actions or a finding's repair. */
  default List<Action> actions() {
    return this instanceof Task task ? task.actions() : this instanceof Finding finding ? finding.repair() : List.of();
  }

  /** The panels that stay open at this end, with a guard. */
  default List<NameRef> guarded() {
    return this instanceof End end ? end.guarded() : this instanceof Finding finding ? finding.guarded() : List.of();
  }

  /** Whether a path ends here: at an end, or at a finding that nothing follows. */
  default boolean isLast() {
    return this instanceof End || (this instanceof Finding && ways().isEmpty());
  }

  default String id() {
    return header().id();
  }

  default String title() {
    return header().title();
  }

  default Source source() {
    return header().source();
  }

  default List<Way> ways() {
    return header().ways();
  }

  default Optional<NameRef> at() {
    return header().at();
  }

  default BigDecimal minutes() {
    return header().minutes();
  }

  default Optional<StepTimer> timer() {
    return header().timer();
  }
}
