package rungbook.system.reader;

import java.util.List;
import java.util.Optional;
import rungbook.markdown.Entry;
import rungbook.source.Code;
import rungbook.system.ControlSystem;
import rungbook.system.Names;
import rungbook.system.Part;
import rungbook.system.PartBranch;
import rungbook.system.Vocabulary;
import rungbook.text.English;

/** Looks up the part or branch that an effect names, and checks that its kind can have the effect. */
final class FaultyParts {

  static final Code FAULT_WITHOUT_PART = Code.of("fault-without-part");

  private final ControlSystem system;
  private final SystemProblems problems;
  private final boolean everyPartIsRead;

  /**
   * Creates the lookup.
   *
   * @param system has all its parts unless there are problems already
   */
  FaultyParts(ControlSystem system, SystemProblems problems) {
    this.system = system;
    this.problems = problems;
    this.everyPartIsRead = problems.all().isEmpty();
  }

  /** The key of a branch; reports an unknown branch or one that cannot have the effect, and returns empty. */
  Optional<String> branch(EffectKind effect, String written, Entry.Item item) {
    List<String> branches = system.parts().stream().flatMap(part -> part.branches().stream()).map(PartBranch::name)
        .toList();
    String key = Names.key(written);
    // a part that cannot have the effect is known by its own name, not only by its branches'
    Optional<Part> part = system.partOfBranch(key)
        .or(() -> system.part(key).filter(named -> named.branches().isEmpty() || !effect.fits(named)));
    return fit(effect, part, written, branches, item);
  }

  /** The key of a part; reports an unknown part or one that cannot have the effect, and returns empty. */
  Optional<String> part(EffectKind effect, String written, Entry.Item item) {
    String key = Names.key(written);
    Optional<Part> part = system.part(key).or(() -> system.partOfBranch(key).filter(owner -> !effect.fits(owner)));
    return fit(effect, part, written, system.parts().stream().map(Part::name).toList(), item);
  }

  private Optional<String> fit(EffectKind effect, Optional<Part> part, String written, List<String> names,
      Entry.Item item) {
    if (part.isEmpty()) {
      if (everyPartIsRead) {
        problems.unknown(FAULT_WITHOUT_PART, item.span(), written, names);
      }
      return Optional.empty();
    }
    if (!effect.fits(part.get())) {
      problems.unfit(item.span(), written, kind(part.get()), effect.done(), EffectKind.instead(part.get(), written));
      return Optional.empty();
    }
    return Optional.of(Names.key(written));
  }

  /** The kind as the text writes it, with its indefinite article. */
  private String kind(Part part) {
    Vocabulary.Part known = system.vocabulary().parts().get(part.key());
    return English.withArticle(known == null ? "part" : known.kind());
  }
}
