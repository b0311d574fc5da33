package rungbook.tree.reader;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungbook.markdown.Block;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.markdown.Kinds;
import rungbook.markdown.Section;
import rungbook.source.Code;
import rungbook.source.Edit;
import rungbook.source.Fix;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.source.TextLimits;
import rungbook.system.Names;
import rungbook.tree.Shared;

/**
 * Orders the steps of a tree: its own steps in the order of the text, followed by the steps of the fragments that they
 * include.
 */
final class FragmentExpander {

  static final Code EXIT_MISSING = Code.of("exit-missing");
  static final Code EXIT_OUTSIDE_FRAGMENT = Code.of("exit-outside-fragment");
  static final Code EXIT_UNDECLARED = Code.of("exit-undeclared");
  static final Code FRAGMENT_CIRCLE = Code.of("fragment-circle");
  static final Code FRAGMENTS_TOO_DEEP = Code.of("fragments-too-deep");
  static final Code HEADING_EMPTY = Code.of("heading-empty");
  static final Code HEADING_TWICE = Code.of("heading-twice");
  static final Code STEP_BLOCK_TWICE = Code.of("step-block-twice");
  static final Code TOO_MANY_STEPS = Code.of("too-many-steps");
  static final Code UNKNOWN_FRAGMENT = Code.of("unknown-fragment");

  private final Shared shared;
  private final Problems problems;
  private final TextLimits limits;
  private final List<UnresolvedStep> expanded = new ArrayList<>();

  private FragmentExpander(Shared shared, TextLimits limits, Problems problems) {
    this.shared = shared;
    this.limits = limits;
    this.problems = problems;
  }

  static List<UnresolvedStep> of(Document document, Shared shared, Problems problems) {
    FragmentExpander expander = new FragmentExpander(shared, document.limits(), problems);
    expander.expand(Scope.of(document));
    return expander.expanded;
  }

  private void expand(Scope scope) {
    var taking = new ArrayList<UnresolvedStep>();
    Set<String> slugs = new HashSet<>();
    for (Section section : scope.document().sections()) {
      stepBlock(scope, section).ifPresentOrElse(
          block -> expand(new UnresolvedStep(scope, section, block), slugs, taking),
          () -> scope.chapters().add(section.slug()));
    }
    scope.taker().ifPresent(taker -> inspectExits(scope));
    taking.forEach(this::takeIn);
  }

  private void expand(UnresolvedStep unresolved, Set<String> slugs, List<UnresolvedStep> taking) {
    Section section = unresolved.section();
    if (section.slug().isEmpty()) {
      problems
          .add(Problem.at(HEADING_EMPTY, unresolved.source(), section.titleSpan()).with("heading", section.title()));
    } else if (!slugs.add(section.slug())) {
      problems
          .add(Problem.at(HEADING_TWICE, unresolved.source(), section.titleSpan()).with("heading", section.title()));
    } else {
      place(unresolved, taking);
    }
  }

  private void place(UnresolvedStep unresolved, List<UnresolvedStep> taking) {
    String slug = unresolved.section().slug();
    if (unresolved.is("exit")) {
      unresolved.scope().exitBySlug().put(slug, exitName(unresolved));
      return;
    }
    unresolved.scope().indexBySlug().put(slug, expanded.size());
    expanded.add(unresolved);
    if (unresolved.is("take")) {
      taking.add(unresolved);
    }
  }

  private String exitName(UnresolvedStep unresolved) {
    StepKeys.inspect(unresolved.block().entries(), StepKeys.of("exit"), "an exit", unresolved.source(), problems);
    if (unresolved.scope().taker().isEmpty()) {
      problems.add(Problem.at(EXIT_OUTSIDE_FRAGMENT, unresolved.source(), unresolved.block().kindSpan()));
    }
    return Names.key(unresolved.block().entry("answer").map(Entry::value).orElse(unresolved.section().title()));
  }

  /**
   * Compares a fragment's exit steps with the exits it declares. A misspelled exit is reported once, not also as
   * missing.
   */
  private void inspectExits(Scope scope) {
    Document fragment = scope.document();
    Set<String> declared = exits(fragment);
    Set<String> missing = new HashSet<>(declared);
    missing.removeAll(scope.exitBySlug().values());
    for (Section section : fragment.sections()) {
      String exit = scope.exitBySlug().get(section.slug());
      if (exit != null && !declared.contains(exit)) {
        Optional<String> near = Nearest.to(exit, declared);
        near.ifPresent(missing::remove);
        problems.add(Problem.at(EXIT_UNDECLARED, fragment.source(), section.titleSpan()).with("exit", exit)
            .with("exits", String.join(", ", declared)).near(exit, near)
            .fixedBy(near.map(name -> answerWith(name, section, fragment))));
      }
    }
    fragment.front("exits").ifPresent(entry -> entry.items().stream()
        .filter(item -> missing.contains(Names.key(item.text())))
        .forEach(
            item -> problems.add(Problem.at(EXIT_MISSING, fragment.source(), item.span()).with("exit", item.text()))));
  }

  /** Writes the exit's name in its block, not in its heading, because links lead to the heading. */
  private static Fix answerWith(String exit, Section section, Document fragment) {
    Block block = section.blocks().stream().filter(one -> one.kind().equals("exit")).findFirst().orElseThrow();
    Edit edit = block.entry("answer").map(entry -> new Edit(fragment.source(), entry.valueSpan(), exit))
        .orElseGet(() -> new Edit(fragment.source(), Span.at(block.kindSpan().end()), "\nanswer: " + exit));
    return new Fix("write `answer: " + exit + "`", List.of(edit));
  }

  /** The exits that a fragment declares, as lookup keys. */
  static Set<String> exits(Document fragment) {
    var exits = new LinkedHashSet<String>();
    fragment.front("exits").ifPresent(entry -> entry.items().stream().filter(item -> !item.text().isEmpty())
        .forEach(item -> exits.add(Names.key(item.text()))));
    return exits;
  }

  private void takeIn(UnresolvedStep taker) {
    Optional<Entry> reference = taker.block().entry("fragment");
    Optional<Document> fragment = reference
        .flatMap(name -> Optional.ofNullable(shared.fragments().get(Names.key(name.value()))));
    if (reference.isPresent() && fragment.isEmpty()) {
      problems.add(Problem.at(UNKNOWN_FRAGMENT, taker.source(), reference.get().valueSpan())
          .with("fragment", reference.get().value())
          .near(reference.get().value(), Nearest.to(reference.get().value(), shared.fragments().keySet())));
    } else if (fragment.isPresent() && taker.scope().isWithin(fragment.get())) {
      problems.add(
          Problem.at(FRAGMENT_CIRCLE, taker.source(), reference.get().valueSpan()).with("fragment",
              reference.get().value()));
    } else {
      fragment.ifPresent(document -> takeIn(taker, reference.get(), document));
    }
  }

  /** Nested fragments can double the steps at each level, so both depth and steps are limited. */
  private void takeIn(UnresolvedStep taker, Entry reference, Document fragment) {
    List<Problem> lacks = Fragments.lacks(fragment, taker.source(), reference.valueSpan(), reference.value());
    problems.addAll(Fragments.inspect(fragment));
    if (!lacks.isEmpty()) {
      problems.addAll(lacks);
    } else if (taker.scope().depth() >= limits.depth()) {
      problems
          .add(Problem.at(FRAGMENTS_TOO_DEEP, taker.source(), reference.valueSpan()).with("fragment", reference.value())
              .with("most", limits.depth()));
    } else if (expanded.size() + fragment.sections().size() > limits.steps()) {
      problems.add(Problem.at(TOO_MANY_STEPS, taker.source(), reference.valueSpan()).with("fragment", reference.value())
          .with("most", limits.steps()));
    } else {
      expand(Scope.takenIn(fragment, taker));
    }
  }

  private Optional<Block> stepBlock(Scope scope, Section section) {
    List<Block> steps = section.blocks().stream().filter(block -> Kinds.OF_STEPS.contains(block.kind())).toList();
    if (steps.size() > 1) {
      problems.add(Problem.at(STEP_BLOCK_TWICE, scope.document().source(), steps.get(1).kindSpan())
          .with("first", steps.get(0).kind()).with("second", steps.get(1).kind()));
    }
    return steps.stream().findFirst();
  }
}
