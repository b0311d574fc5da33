package rungbook.report;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import rungbook.source.Edit;
import rungbook.source.Fix;
import rungbook.source.Problem;
import rungbook.source.ProblemList;
import rungbook.source.Quiet;
import rungbook.source.Silenced;
import rungbook.source.Source;
import rungbook.source.Witness;

/** Renames the sources of problems for display. */
public final class SourceRenamer {

  private final UnaryOperator<String> shown;
  private final Map<Source, Source> renamed = new HashMap<>();

  public SourceRenamer(UnaryOperator<String> shown) {
    this.shown = shown;
  }

  public ProblemList of(ProblemList list) {
    return new ProblemList(list.shown().stream().map(this::of).toList(),
        list.silenced().stream().map(this::of).toList(), List.of());
  }

  private Problem of(Problem problem) {
    Optional<Witness> witness = problem.witness().map(this::of);
    return new Problem(problem.code(), of(problem.source()), problem.span(), problem.facts(), witness,
        problem.fix().map(this::of));
  }

  private Silenced of(Silenced silenced) {
    Quiet quiet = silenced.quiet();
    return new Silenced(of(silenced.problem()), new Quiet(quiet.code(), of(quiet.source()), quiet.span(),
        quiet.reason(), quiet.within(), quiet.removal().map(this::of)));
  }

  private Witness of(Witness witness) {
    return !(witness instanceof Witness.Path path) ? witness : new Witness.Path(path.stops().stream()
        .map(stop -> new Witness.Stop(stop.step(), of(stop.source()), stop.span(), stop.answer())).toList(),
        path.variant());
  }

  private Fix of(Fix fix) {
    return new Fix(fix.label(), fix.edits().stream()
        .map(edit -> new Edit(of(edit.source()), edit.span(), edit.replacement())).toList());
  }

  private Source of(Source source) {
    return renamed.computeIfAbsent(source, from -> new Source(shown.apply(from.name()), from.text()));
  }
}
