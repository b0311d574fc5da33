package rungbook.source;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What is wrong, with what the authors have silenced kept apart. It is an error to silence an error, so none of the
 * silenced is one.
 *
 * @param shown in reading order
 * @param silenced in reading order, each without its witness
 * @param idle what is to silence something and has nothing to silence so far: another tree that takes the same
 * fragment in may have it
 */
public record ProblemList(List<Problem> shown, List<Silenced> silenced, List<Quiet> idle) {

  static final Code QUIET_UNUSED = Code.of("quiet-unused");

  public ProblemList {
    shown = List.copyOf(shown);
    silenced = List.copyOf(silenced);
    idle = List.copyOf(idle);
  }

  /** Problems of which none is silenced. */
  public static ProblemList of(List<Problem> problems) {
    return new ProblemList(problems, List.of(), List.of());
  }

  /** Problems, in their order, with those silenced that start where a quiet line of the same text and code counts. */
  public static ProblemList of(List<Problem> problems, List<Quiet> quiets) {
    if (quiets.isEmpty()) {
      return of(problems);
    }
    var index = new QuietIndex(quiets);
    var shown = new ArrayList<Problem>();
    var silenced = new ArrayList<Silenced>();
    for (Problem problem : problems) {
      Optional<Quiet> quiet = index.find(problem);
      quiet.ifPresentOrElse(found -> silenced.add(new Silenced(problem.shownBy(Optional.empty()), found)),
          () -> shown.add(problem));
    }
    return new ProblemList(shown, silenced, unused(quiets.stream(), silenced));
  }

  /** Several lists as one, each problem once: several trees may share a fragment. */
  public static ProblemList join(List<ProblemList> lists) {
    var shown = new Problems();
    lists.forEach(list -> shown.addAll(list.shown()));
    List<Silenced> silenced = Problems.once(lists.stream().flatMap(list -> list.silenced().stream()).toList(),
        Silenced::problem);
    return new ProblemList(shown.inReadingOrder(), silenced,
        unused(lists.stream().flatMap(list -> list.idle().stream()), silenced));
  }

  /** Only the problems for which something holds. */
  public ProblemList filter(Predicate<Problem> wanted) {
    return silenced.isEmpty() && idle.isEmpty() ? of(shown.stream().filter(wanted).toList())
        : new ProblemList(shown.stream().filter(wanted).toList(),
            silenced.stream().filter(one -> wanted.test(one.problem())).toList(), idle);
  }

  /** The same with more problems shown. */
  public ProblemList and(List<Problem> more) {
    var all = new Problems();
    all.addAll(shown);
    all.addAll(more);
    return new ProblemList(all.inReadingOrder(), silenced, idle);
  }

  /** The same with other problems shown, such as the worst of many. */
  public ProblemList showing(List<Problem> others) {
    return new ProblemList(others, silenced, idle);
  }

  /** The problems of the idle lines for which something holds: what nothing needs would hide a later mistake. */
  public List<Problem> unused(Predicate<Quiet> judged) {
    return idle.stream().filter(judged).map(quiet -> Problem.at(QUIET_UNUSED, quiet.source(), quiet.span())
        .with("code", quiet.code()).fixedBy(quiet.removal())).toList();
  }

  private static List<Quiet> unused(Stream<Quiet> quiets, List<Silenced> silenced) {
    var idle = new LinkedHashSet<>(quiets.toList());
    if (!idle.isEmpty()) {
      var used = new HashSet<Quiet>();
      silenced.forEach(one -> used.add(one.quiet()));
      idle.removeAll(used);
    }
    return List.copyOf(idle);
  }
}
