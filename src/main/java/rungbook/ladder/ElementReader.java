package rungbook.ladder;

import rungbook.system.Condition;
import rungbook.system.ControlSystem;
import rungbook.system.Part;
import rungbook.system.PartBranch;
import rungbook.system.Vocabulary;

/** Which symbol and note a limb has. */
final class ElementReader {

  private final ControlSystem system;
  private final ConditionWords words;
  private final NormalPositions normal;

  ElementReader(ControlSystem system) {
    this.system = system;
    this.words = new ConditionWords(system);
    this.normal = new NormalPositions(system);
  }

  Element of(Part part, PartBranch branch) {
    String note = part instanceof Part.Switch contact ? words.of(contact) : "";
    return new Element(branch.name(), part.key(), symbol(part), note,
        part instanceof Part.Load || (part instanceof Part.Transformer && part.branches().get(0).equals(branch)));
  }

  private Symbol symbol(Part part) {
    if (part instanceof Part.Supply) {
      return Symbol.SOURCE;
    }
    if (part instanceof Part.Cable) {
      return Symbol.CABLE;
    }
    if (part instanceof Part.Wire || part instanceof Part.Joint) {
      return Symbol.WIRE;
    }
    if (part instanceof Part.Switch contact && kind(part).equals("contact")) {
      return normal.isClosed(contact) ? Symbol.CONTACT_NORMALLY_CLOSED : Symbol.CONTACT;
    }
    return Symbol.ofKind(kind(part));
  }

  private String kind(Part part) {
    Vocabulary.Part named = system.vocabulary().parts().get(part.key());
    return named == null ? "" : named.kind();
  }

  /** Hand switches and interlocks are part of a feed, a contact that something moves is not. */
  boolean isFeed(Part part) {
    return part instanceof Part.Wire || part instanceof Part.Cable || part instanceof Part.Fuse
        || (part instanceof Part.Switch contact && contact.closedWhen().equals(Condition.always()));
  }
}
