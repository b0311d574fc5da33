package rungbook.rules.paths;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import rungbook.system.Names;
import rungbook.tree.Answer;
import rungbook.tree.Step;
import rungbook.tree.Way;

/**
 * The words that answer a question, one piece each, plus one piece for all other words unless the answers are yes and
 * no.
 */
final class WordDomain {

  private final Map<String, Integer> pieces = new LinkedHashMap<>();

  private WordDomain() {}

  /** @param checks the checks with the same question, each with the index of the thing in question */
  static Domain of(List<Asked> checks) {
    WordDomain domain = new WordDomain();
    checks.forEach(domain::gather);
    boolean yesOrNo = domain.pieces.keySet().stream().allMatch(word -> word.equals("yes") || word.equals("no"));
    if (yesOrNo) {
      domain.add("yes");
      domain.add("no");
    } else {
      domain.add("");
    }
    Domain empty = new Domain(domain.pieces.size(), List.of());
    return empty.canBeFollowed()
        ? new Domain(empty.size(), checks.stream().map(asked -> domain.taken(asked, empty.all())).toList()) : empty;
  }

  /** A check and the thing in question. */
  record Asked(Step.Check check, int thing) {
    List<Way> ways() {
      return check.ways();
    }

    boolean isAlone() {
      return check instanceof Step.SenseCheck sense && sense.things().size() == 1;
    }
  }

  private void gather(Asked asked) {
    for (Way way : asked.ways()) {
      if (way.answer() instanceof Answer.Words words && asked.thing() < words.words().size()) {
        String word = Names.key(words.words().get(asked.thing()));
        if (!word.equals(Answer.Words.ANY)) {
          add(word);
        }
      }
    }
  }

  private void add(String word) {
    pieces.putIfAbsent(word, pieces.size());
  }

  private long[] taken(Asked asked, long all) {
    List<Way> ways = asked.ways();
    long[] taken = new long[ways.size()];
    long used = 0;
    for (int way = 0; way < taken.length; way++) {
      taken[way] = taken(ways.get(way).answer(), asked, all);
      used |= ways.get(way).answer() instanceof Answer.Words ? taken[way] : 0;
    }
    for (int way = 0; way < taken.length; way++) {
      if (asked.isAlone() && ways.get(way).answer() instanceof Answer.AnythingElse) {
        taken[way] = all & ~used;
      }
    }
    return taken;
  }

  /** In a check of several things, {@code anything else} says nothing about one of them. */
  private long taken(Answer answer, Asked asked, long all) {
    if (answer instanceof Answer.Words words && asked.thing() < words.words().size()) {
      String word = Names.key(words.words().get(asked.thing()));
      return word.equals(Answer.Words.ANY) ? all : 1L << Objects.requireNonNull(pieces.get(word));
    }
    return answer instanceof Answer.AnythingElse ? all : Domain.ANY;
  }
}
