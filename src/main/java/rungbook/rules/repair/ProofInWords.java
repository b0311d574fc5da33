package rungbook.rules.repair;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import rungbook.action.ActionKind;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.tree.Step;

/** The words of a finding that nothing follows order a proof of dead, and no line says at which points. */
public final class ProofInWords implements Rule {

  static final Code PROOF_IN_WORDS = Code.of("proof-in-words");

  private static final Pattern PROOF = Pattern.compile("\\b(?:" + Arrays.stream(ActionKind.values())
      .filter(kind -> kind.begins(EquipmentCondition.PROVED_DEAD)).map(ActionKind::words)
      .collect(Collectors.joining("|")) + ")\\b", Pattern.CASE_INSENSITIVE);

  @Override
  public List<Code> codes() {
    return List.of(PROOF_IN_WORDS);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    for (Step step : context.tree().steps()) {
      if (step instanceof Step.Finding finding && finding.isLast() && finding.header().section().unread().isEmpty()
          && finding.repair().stream().noneMatch(action -> action.kind().begins(EquipmentCondition.PROVED_DEAD))) {
        order(finding)
            .ifPresent(order -> out.add(Problem.at(PROOF_IN_WORDS, finding.source(), order).with("step",
                finding.title())));
      }
    }
  }

  private static Optional<Span> order(Step.Finding finding) {
    Span words = new Span(finding.header().block().span().end(), finding.header().section().span().end());
    Matcher order = PROOF.matcher(finding.source().text(words));
    return order.find() ? Optional.of(words.part(order.start(), order.end() - order.start())) : Optional.empty();
  }
}
