package rungbook.system.reader;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
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
  private final Map<String, Part> parts = new HashMap<>();
  private final Map<String, Part> branches = new HashMap<>();
  private final Set<String> asked = new HashSet<>();
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
    system.parts().forEach(part -> {
      parts.putIfAbsent(part.key(), part);
      part.branches().forEach(branch -> branches.putIfAbsent(branch.key(), part));
    });
  }

  /** The keys asked for since this was called last. */
  Set<String> takeAsked() {
    Set<String> taken = new HashSet<>(asked);
    asked.clear();
    return taken;
  }

  private Optional<Part> named(String key) {
    asked.add(key);
    return Optional.ofNullable(parts.get(key));
  }

  private Optional<Part> ownerOf(String branch) {
    asked.add(branch);
    return Optional.ofNullable(branches.get(branch));
  }

  /** The key of a branch; reports an unknown branch or one that cannot have the effect, and returns empty. */
  Optional<String> branch(EffectKind effect, String written, Entry.Item item) {
    String key = Names.key(written);
    // a part that cannot have the effect is known by its own name, not only by its branches'
    Optional<Part> part = ownerOf(key)
        .or(() -> named(key).filter(named -> named.branches().isEmpty() || !effect.fits(named)));
    return fit(effect, part, written, () -> system.parts().stream().flatMap(one -> one.branches().stream())
        .map(PartBranch::name).toList(), item);
  }

  /** The key of a part; reports an unknown part or one that cannot have the effect, and returns empty. */
  Optional<String> part(EffectKind effect, String written, Entry.Item item) {
    String key = Names.key(written);
    Optional<Part> part = named(key).or(() -> ownerOf(key).filter(owner -> !effect.fits(owner)));
    return fit(effect, part, written, () -> system.parts().stream().map(Part::name).toList(), item);
  }

  private Optional<String> fit(EffectKind effect, Optional<Part> part, String written,
      Supplier<List<String>> names, Entry.Item item) {
    if (part.isEmpty()) {
      if (everyPartIsRead) {
        problems.unknown(FAULT_WITHOUT_PART, item.span(), written, names.get());
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
