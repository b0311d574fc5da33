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
 * Gives every step its place: the tree's own in the order of the text, each fragment's behind the step that takes it
 * in.
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
  private final List<UnresolvedStep> drafts = new ArrayList<>();

  private FragmentExpander(Shared shared, TextLimits limits, Problems problems) {
    this.shared = shared;
    this.limits = limits;
    this.problems = problems;
  }

  static List<UnresolvedStep> of(Document document, Shared shared, Problems problems) {
    FragmentExpander layout = new FragmentExpander(shared, document.limits(), problems);
    layout.lay(Scope.of(document));
    return layout.drafts;
  }

  private void lay(Scope scope) {
    var taking = new ArrayList<UnresolvedStep>();
    Set<String> slugs = new HashSet<>();
    for (Section section : scope.document().sections()) {
      stepBlock(scope, section).ifPresentOrElse(block -> lay(new UnresolvedStep(scope, section, block), slugs, taking),
          () -> scope.chapters().add(section.slug()));
    }
    scope.taker().ifPresent(taker -> inspectExits(scope));
    taking.forEach(this::takeIn);
  }

  private void lay(UnresolvedStep draft, Set<String> slugs, List<UnresolvedStep> taking) {
    Section section = draft.section();
    if (section.slug().isEmpty()) {
      problems.add(Problem.at(HEADING_EMPTY, draft.source(), section.titleSpan()).with("heading", section.title()));
    } else if (!slugs.add(section.slug())) {
      problems.add(Problem.at(HEADING_TWICE, draft.source(), section.titleSpan()).with("heading", section.title()));
    } else {
      place(draft, taking);
    }
  }

  private void place(UnresolvedStep draft, List<UnresolvedStep> taking) {
    String slug = draft.section().slug();
    if (draft.is("exit")) {
      draft.scope().exitBySlug().put(slug, exitName(draft));
      return;
    }
    draft.scope().indexBySlug().put(slug, drafts.size());
    drafts.add(draft);
    if (draft.is("take")) {
      taking.add(draft);
    }
  }

  private String exitName(UnresolvedStep draft) {
    StepKeys.inspect(draft.block().entries(), StepKeys.of("exit"), "an exit", draft.source(), problems);
    if (draft.scope().taker().isEmpty()) {
      problems.add(Problem.at(EXIT_OUTSIDE_FRAGMENT, draft.source(), draft.block().kindSpan()));
    }
    return Names.key(draft.block().entry("answer").map(Entry::value).orElse(draft.section().title()));
  }

  /**
   * A fragment's exit steps and the exits it declares are the same. A slip in one is reported there, and not as
   * missing too.
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

  /** Says the exit's name in its block, not in its heading: links lead to the heading. */
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
    Optional<Entry> named = taker.block().entry("fragment");
    Optional<Document> fragment = named
        .flatMap(name -> Optional.ofNullable(shared.fragments().get(Names.key(name.value()))));
    if (named.isPresent() && fragment.isEmpty()) {
      problems.add(Problem.at(UNKNOWN_FRAGMENT, taker.source(), named.get().valueSpan())
          .with("fragment", named.get().value())
          .near(named.get().value(), Nearest.to(named.get().value(), shared.fragments().keySet())));
    } else if (fragment.isPresent() && taker.scope().isWithin(fragment.get())) {
      problems.add(
          Problem.at(FRAGMENT_CIRCLE, taker.source(), named.get().valueSpan()).with("fragment", named.get().value()));
    } else {
      fragment.ifPresent(document -> takeIn(taker, named.get(), document));
    }
  }

  /** Fragments that take in fragments can double at every turn, so both their depth and the steps are limited. */
  private void takeIn(UnresolvedStep taker, Entry named, Document fragment) {
    List<Problem> lacks = Fragments.lacks(fragment, taker.source(), named.valueSpan(), named.value());
    problems.addAll(Fragments.inspect(fragment));
    if (!lacks.isEmpty()) {
      problems.addAll(lacks);
    } else if (taker.scope().depth() >= limits.depth()) {
      problems.add(Problem.at(FRAGMENTS_TOO_DEEP, taker.source(), named.valueSpan()).with("fragment", named.value())
          .with("most", limits.depth()));
    } else if (drafts.size() + fragment.sections().size() > limits.steps()) {
      problems.add(Problem.at(TOO_MANY_STEPS, taker.source(), named.valueSpan()).with("fragment", named.value())
          .with("most", limits.steps()));
    } else {
      lay(Scope.takenIn(fragment, taker));
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
