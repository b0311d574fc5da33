package rungbook.rules.wording;

import java.util.List;

/**
 * A word or phrase that a library avoids.
 *
 * @param words as the list writes it
 * @param uses what to write instead, at least one; with several, the author chooses
 * @param reason may be empty
 */
public record AvoidedWord(String words, List<String> uses, String reason) {

  public AvoidedWord {
    uses = List.copyOf(uses);
  }
}
