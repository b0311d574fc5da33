package rungbook.web.api;

import java.util.List;
import java.util.Optional;
import rungbook.library.CompiledTree;
import rungbook.library.Silencing;
import rungbook.proof.Proving;
import rungbook.proof.accounting.Share;
import rungbook.proof.advice.Advice;
import rungbook.proof.advice.AdviceText;
import rungbook.proof.advice.Recommendation;
import rungbook.proof.advice.TreeState;
import rungbook.proof.report.Proof;
import rungbook.source.Fix;
import rungbook.source.Wording;
import rungbook.web.views.EditView;
import rungbook.web.views.StateView;

/**
 * A proof as an editor shows it beside the text.
 *
 * @param unproved why there is none; empty where there is
 * @param named how many faults the tree names; {@code found} of them are always found
 * @param state of the text, from its check and its proof
 * @param toDo what can hurt or mislead most first
 * @param behind what to say of the problems that may go away with the first ones; empty if there are none
 */
record LiveProof(String unproved, int named, int found, StateView state, List<ToDo> toDo, String behind) {

  /**
   * @param file where it is
   * @param from offset in that text, in UTF-16 units
   * @param fix what one click does; empty where no known edit does it
   * @param edits that click's, all in {@code file}
   */
  record ToDo(String what, String why, String file, int from, String fix, List<EditView> edits) {
    static ToDo of(Recommendation one) {
      var text = AdviceText.of(one);
      var fix = one.problem().fix();
      return new ToDo(text.what(), text.why(), one.problem().source().name(), one.problem().span().start(),
          fix.map(Fix::label).orElse(""), fix.map(EditView::of).orElse(List.of()));
    }
  }

  static LiveProof of(CompiledTree compiled, Proving.Result result) {
    return result.proved().map(proof -> of(compiled, result, proof)).orElseGet(() -> unproved(compiled, result));
  }

  private static LiveProof unproved(CompiledTree compiled, Proving.Result result) {
    var why = result.problems().get(0);
    return new LiveProof(Wording.of(why).sentence(why), 0, 0,
        StateView.of(TreeState.of(compiled.problems(), Optional.empty())), List.of(), "");
  }

  private static LiveProof of(CompiledTree compiled, Proving.Result result, Proof proof) {
    var advice = Advice.of(proof, Silencing.ofProof(compiled.tree(), result).shown());
    var named = proof.outcomes().stream().filter(Proof.Outcome::claimed).toList();
    var found = (int) named.stream().filter(outcome -> Share.isAll(outcome.found())).count();
    return new LiveProof("", named.size(), found,
        StateView.of(TreeState.of(compiled.problems(), Optional.of(advice))),
        advice.first().stream().map(ToDo::of).toList(), AdviceText.behind(advice).orElse(""));
  }
}
