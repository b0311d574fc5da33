package rungbook.pack.page;

import java.util.List;
import rungbook.pack.path.ProvedPairs;
import rungbook.pack.path.SaidDeeds;
import rungbook.pack.path.StepStates;
import rungbook.tree.Action;
import rungbook.tree.Step;

/**
 * What is done at a step: in the author's words where there are any, then what these leave out, the pairs of points to
 * tick, and what is changed when all of it is done.
 */
final class TaskText {

  private final PackProse prose;
  private final ActionSentences sentences;
  private final StepStates states;

  TaskText(PackProse prose, ActionSentences sentences, StepStates states) {
    this.prose = prose;
    this.sentences = sentences;
    this.states = states;
  }

  void of(Html html, Step step) {
    String words = prose.of(step);
    if (!words.isBlank()) {
      html.open("div", "class", "words do").raw(words).close("div").line();
    }
    List<Action> actions = step.actions();
    List<ActionSentences.Sentence> left = words.isBlank() ? sentences.of(actions)
        : sentences.unsaid(actions, new SaidDeeds(step.title(), words));
    if (!left.isEmpty()) {
      if (!words.isBlank()) {
        html.element("p", "Part of this step:", "class", "order").line();
      }
      html.open("ol", "class", "actions");
      left.forEach(sentence -> sentence(html, sentence));
      html.close("ol").line();
    }
    List<String> points = ActionSentences.points(actions);
    if (!points.isEmpty() && left.stream().allMatch(sentence -> sentence.pairs().isEmpty())) {
      html.element("p", "Tick each pair that reads dead:", "class", "order");
      pairs(html, ProvedPairs.worded(words, points).orElseGet(() -> ProvedPairs.all(points)));
    }
    after(html, step);
  }

  private static void sentence(Html html, ActionSentences.Sentence sentence) {
    html.open("li").text(sentence.words());
    pairs(html, sentence.pairs());
    html.close("li").line();
  }

  private static void pairs(Html html, List<String> pairs) {
    if (!pairs.isEmpty()) {
      html.open("ul", "class", "pairs");
      pairs.forEach(pair -> html.open("li").open("label").open("input", "type", "checkbox").text(pair).close("label")
          .close("li").line());
      html.close("ul").line();
    }
  }

  private void after(Html html, Step step) {
    List<String> changed = states.after(step);
    if (!changed.isEmpty()) {
      html.open("p", "class", "after").text("Then: ").element("b", String.join(" · ", changed)).close("p").line();
    }
  }
}
