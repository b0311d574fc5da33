package rungbook.system;

import java.util.List;
import java.util.Optional;
import rungbook.markdown.Entry;
import rungbook.source.Code;

/** Looks up the part or the limb that an effect names, and whether its kind can have that effect. */
final class FaultyParts {

  static final Code FAULT_WITHOUT_PART = Code.of("fault-without-part");

  private final ControlSystem system;
  private final SystemProblems problems;
  private final boolean everyPartIsRead;

  /** @param system its parts are all there, unless there are problems already */
  FaultyParts(ControlSystem system, SystemProblems problems) {
    this.system = system;
    this.problems = problems;
    this.everyPartIsRead = problems.all().isEmpty();
  }

  /** The key of a limb; empty, and reported, if there is none or it cannot have the effect. */
  Optional<String> limb(EffectKind effect, String written, Entry.Item item) {
    List<String> limbs = system.parts().stream().flatMap(part -> part.limbs().stream()).map(PartBranch::name).toList();
    String key = Names.key(written);
    // a state has no limb, and yet what is wrong is the effect and not its name
    Optional<Part> part = system.partOfLimb(key).or(() -> system.part(key).filter(named -> named.limbs().isEmpty()));
    return fit(effect, part, written, limbs, item);
  }

  /** The key of a part; empty, and reported, if there is none or it cannot have the effect. */
  Optional<String> part(EffectKind effect, String written, Entry.Item item) {
    String key = Names.key(written);
    Optional<Part> part = system.part(key).or(() -> system.partOfLimb(key).filter(owner -> !effect.fits(owner)));
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

  /** The kind as the text writes it, with its article. */
  private String kind(Part part) {
    Vocabulary.Part known = system.vocabulary().parts().get(part.key());
    String kind = known == null ? "part" : known.kind();
    return ("aeiou".indexOf(kind.charAt(0)) >= 0 ? "an " : "a ") + kind;
  }
}
