package rungbook.tree;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungbook.markdown.Block;
import rungbook.markdown.Document;
import rungbook.markdown.Entry;
import rungbook.markdown.Kinds;
import rungbook.markdown.Section;
import rungbook.source.Nearest;
import rungbook.source.Problem;
import rungbook.system.Names;

/** Gives every step its place: the tree's own in the order of the text, each fragment's behind the step that takes it in. */
final class Layout {

  private final Shared shared;
  private final List<Problem> problems;
  private final List<Draft> drafts = new ArrayList<>();

  private Layout(Shared shared, List<Problem> problems) {
    this.shared = shared;
    this.problems = problems;
  }

  static List<Draft> of(Document document, Shared shared, List<Problem> problems) {
    Layout layout = new Layout(shared, problems);
    layout.lay(Scope.of(document));
    return layout.drafts;
  }

  private void lay(Scope scope) {
    var taking = new ArrayList<Draft>();
    Set<String> slugs = new HashSet<>();
    for (Section section : scope.document().sections()) {
      stepBlock(scope, section).ifPresent(block -> {
        if (!slugs.add(section.slug())) {
          problems.add(Problem.at("heading-twice", scope.document().source(), section.titleSpan()).with("heading", section.title()));
          return;
        }
        place(new Draft(scope, section, block), taking);
      });
    }
    taking.forEach(this::takeIn);
  }

  private void place(Draft draft, List<Draft> taking) {
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

  private String exitName(Draft draft) {
    if (draft.scope().document().front("exits").isEmpty()) {
      problems.add(Problem.at("exit-outside-fragment", draft.scope().document().source(), draft.block().kindSpan()));
    }
    return Names.key(draft.block().entry("answer").map(Entry::value).orElse(draft.section().title()));
  }

  private void takeIn(Draft taker) {
    Optional<Entry> named = taker.block().entry("fragment");
    Optional<Document> fragment = named.flatMap(name -> Optional.ofNullable(shared.fragments().get(Names.key(name.value()))));
    if (named.isPresent() && fragment.isEmpty()) {
      problems.add(Problem.at("unknown-fragment", taker.scope().document().source(), named.get().valueSpan())
          .with("fragment", named.get().value()).near(Nearest.to(named.get().value(), shared.fragments().keySet())));
    } else if (fragment.isPresent() && taker.scope().isWithin(fragment.get())) {
      problems.add(Problem.at("fragment-circle", taker.scope().document().source(), named.get().valueSpan()).with("fragment", named.get().value()));
    } else {
      fragment.ifPresent(document -> lay(Scope.takenIn(document, taker)));
    }
  }

  private Optional<Block> stepBlock(Scope scope, Section section) {
    List<Block> steps = section.blocks().stream().filter(block -> Kinds.OF_STEPS.contains(block.kind())).toList();
    if (steps.size() > 1) {
      problems.add(Problem.at("step-block-twice", scope.document().source(), steps.get(1).kindSpan())
          .with("first", steps.get(0).kind()).with("second", steps.get(1).kind()));
    }
    return steps.stream().findFirst();
  }
}
