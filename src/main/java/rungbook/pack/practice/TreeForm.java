package rungbook.pack.practice;

import static rungbook.text.JsonText.array;
import static rungbook.text.JsonText.string;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import rungbook.action.StateChange;
import rungbook.circuit.export.Interned;
import rungbook.pack.page.FileNames;
import rungbook.text.JsonText;
import rungbook.tree.Action;
import rungbook.tree.Answer;
import rungbook.tree.Meter;
import rungbook.tree.NameRef;
import rungbook.tree.Readings;
import rungbook.tree.Step;
import rungbook.tree.StepTimer;
import rungbook.tree.Symptoms;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/**
 * A tree for a script that follows it up to a finding: its id, title, complaint, the address of its pack, its
 * symptoms, and its steps. A step is its kind (0 a check with a meter, 1 one by a sense, 2 a task, 3 a finding), the
 * number of its title, its minutes, its place or −1, and what its kind has. A way leads to the number of a step, to
 * {@code [tree]}, or to −1. What only follows a finding is left out.
 */
final class TreeForm {

  private final Tree tree;
  private final Interned names;
  private final Interned titles;

  TreeForm(Tree tree, Interned names, Interned titles) {
    this.tree = tree;
    this.names = names;
    this.titles = titles;
  }

  String json() {
    SortedSet<Integer> reached = reached();
    List<String> steps = new ArrayList<>();
    for (int i = 0; i <= reached.last(); i++) {
      steps.add(reached.contains(i) ? step(tree.steps().get(i)) : "0");
    }
    return array(List.of(string(tree.id()), string(tree.title()), string(tree.complaint()),
        string(FileNames.address(tree.id())), tree.symptoms().map(this::symptoms).orElse("0"), array(steps)));
  }

  private SortedSet<Integer> reached() {
    var reached = new TreeSet<Integer>(List.of(0));
    Deque<Integer> waiting = new ArrayDeque<>(reached);
    while (!waiting.isEmpty()) {
      Step step = tree.steps().get(waiting.poll());
      if (!(step instanceof Step.Finding)) {
        step.ways().forEach(way -> {
          if (way.target() instanceof Target.ToStep to && reached.add(to.step())) {
            waiting.add(to.step());
          }
        });
      }
    }
    return reached;
  }

  private String symptoms(Symptoms symptoms) {
    return array(List.of(
        array(symptoms.call().stream().map(called -> array(List.of(names.of(called.control()),
            array(called.positions().stream().map(names::of).toList())))).toList()),
        keys(symptoms.seen()), keys(symptoms.notSeen()), keys(symptoms.notAllSeen())));
  }

  private String keys(List<NameRef> refs) {
    return array(refs.stream().map(ref -> names.of(ref.key())).toList());
  }

  private String step(Step step) {
    var fields = new ArrayList<Object>();
    fields.add(step instanceof Step.MeterCheck ? 0
        : step instanceof Step.SenseCheck ? 1 : step instanceof Step.Task ? 2 : 3);
    fields.add(titles.of(string(step.title())));
    fields.add(JsonText.number(step.minutes().doubleValue()));
    fields.add(step.at().map(place -> names.of(place.key())).orElse(-1));
    if (step instanceof Step.MeterCheck check) {
      fields.addAll(meterCheck(check));
    } else if (step instanceof Step.SenseCheck check) {
      fields.add(keys(check.things()));
      fields.add(array(check.ways().stream().map(this::senseWay).toList()));
    } else if (step instanceof Step.Task task) {
      fields.add(array(task.actions().stream().map(this::changes).toList()));
      fields.add(task.ways().stream().findFirst().map(this::target).orElse("-1"));
      fields.add(task.timer().filter(timer -> timer.kind() == StepTimer.Kind.WAIT).map(StepTimer::seconds).orElse(0));
    } else if (step instanceof Step.Finding finding) {
      fields.add(keys(finding.faults()));
    }
    return array(fields);
  }

  /** Dial, leads, last digit, highest count, the ways of counts, and those for overload, no reading, anything else. */
  private List<Object> meterCheck(Step.MeterCheck check) {
    Optional<Meter.Scale> scale = tree.meter().scale(check.quantity());
    Optional<Dial> dial = Dial.of(check.quantity());
    if (scale.isEmpty() || dial.isEmpty()) {
      return List.of("\"\"", "[]", 1, 0, array(check.ways().stream().map(way -> array(List.of(1, 0, target(way))))
          .toList()), "-1", "-1", "-1");
    }
    Readings readings = Readings.of(check, scale.get());
    return List.of(string(dial.get().script()), keys(check.leads()), readings.digit().toPlainString(),
        readings.highCount(),
        array(readings.spans().stream().filter(span -> !span.isEmpty())
            .map(span -> array(List.of(span.from(), span.to(), target(check, span.way())))).toList()),
        target(check, readings.wayOfOverload().orElse(-1)), target(check, readings.wayOfNoReading().orElse(-1)),
        target(check, readings.elseWay().orElse(-1)));
  }

  private String senseWay(Way way) {
    String words = way.answer() instanceof Answer.Words answer
        ? array(answer.words().stream().map(JsonText::string).toList()) : "0";
    return array(List.of(words, target(way)));
  }

  private String target(Step step, int way) {
    return way < 0 || way >= step.ways().size() ? "-1" : target(step.ways().get(way));
  }

  private String target(Way way) {
    if (way.target() instanceof Target.ToStep to) {
      return String.valueOf(to.step());
    }
    return way.target() instanceof Target.ToTree to ? array(List.of(string(to.tree()))) : "-1";
  }

  /** {@code [0, control, position]}, {@code [1, condition, thing]} where one begins, {@code [2, ...]} where it ends. */
  private String changes(Action action) {
    return array(action.changes().stream().map(this::change).toList());
  }

  private String change(StateChange change) {
    if (change instanceof StateChange.SetPosition set) {
      return array(List.of(0, names.of(set.control()), names.of(set.position())));
    }
    if (change instanceof StateChange.Begin begin) {
      return array(List.of(1, begin.condition().ordinal(), names.of(begin.key())));
    }
    StateChange.End end = (StateChange.End) change;
    return array(List.of(2, end.condition().ordinal(), names.of(end.key())));
  }
}
