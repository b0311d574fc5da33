package rungbook.proof.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungbook.proof.MadeUp;
import rungbook.proof.report.Proof;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Severity;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.source.Wording;
import rungbook.tree.Tree;

/** What to do about trees with readings written down by hand, in the words that a technician reads. */
class AdviceTest {

  private static final String ENDS = "\n## Sound\n\n```finding\nhealthy: yes\n```\n\n## Weak\n\n```finding\nfault: "
      + "wire weak\nrefer: a senior technician\n```\n\n## Dead\n\n```finding\n"
      + "fault: lamp dead\nrefer: a senior technician"
      + "\n```\n\n## Call\n\n```finding\nrefer: the office\n```\n";

  private static final MadeUp LAMP = new MadeUp(Map.of("healthy VOLTS", new double[] {26, 24, 25, 23},
      "lamp dead VOLTS", new double[] {0, 0, 1, 1}, "wire weak VOLTS", new double[] {15, 17, 16, 18}));

  private static Tree limit(String number) {
    return MadeUp.tree("one", "## On\n\n```task\nset: lever on\nat: hall\n```\n\n- done: [Volts](#volts)\n\n## Volts\n"
        + "\n```check\nmeasure: AC volts\nleads: A, B\nat: attic\nexpect: " + number + " to 30 V\n```\n\n- " + number
        + " to 30: [Sound](#sound)\n- 5 to " + number
        + ": [Weak](#weak)\n- under 5: [Dead](#dead)\n- over 30: [Call](#call)\n" + ENDS);
  }

  private static Advice advice(MadeUp system, Tree tree) {
    Proof proof = system.prove(tree);
    return Advice.of(proof, proof.problems());
  }

  private static long asking(Proof proof) {
    return proof.problems().stream().filter(problem -> Wording.of(problem).severity() != Severity.NOTE).count();
  }

  /** 24 V is shown as 23.5 to 24.5 V, and 25 V as 24.5 to 25.6 V: under 24.5 V are 95 %, 4 % and none of 26 V. */
  @Test
  void aLimitAmongGoodReadingsIsMovedFirstWithOneHouseThatShowsIt() {
    Advice advice = advice(LAMP, limit("24.5"));
    AdviceText text = AdviceText.of(advice.first().get(0));
    assertEquals("Move 24.5 to 20 V at `Volts`.", text.what());
    assertTrue(text.why().matches("In a house with house 1, a good unit reads 24 V here\\. The answer `5 to 24\\.5` "
        + "can take it, and you send it to `Weak`\\. \\d+ % of good units go that way\\. "
        + "Any limit over 18\\.5 V, up to "
        + "22\\.5 V works\\."), text.why());
  }

  /** The false alarm at `Weak` comes through the limit, and goes away with it. */
  @Test
  void whatComesPastALimitThatMovesIsHeldBackUntilTheNextProof() {
    Proof proof = LAMP.prove(limit("24.5"));
    Advice advice = Advice.of(proof, proof.problems());
    assertEquals(1, advice.first().size());
    assertEquals(asking(proof) - 1, advice.behind());
    assertTrue(advice.behind() > 0);
    assertTrue(AdviceText.behind(advice).orElseThrow().startsWith("Then prove again. " + advice.behind() + " more"));
    assertEquals(0, advice(LAMP, limit("20")).behind());
  }

  @Test
  void aTreeWhoseLimitsWorkAsksForNothing() {
    assertEquals(List.of(), advice(LAMP, limit("20")).first());
  }

  @Test
  void whereNoLimitWorksAnotherCheckIsAskedFor() {
    MadeUp alike = new MadeUp(Map.of("healthy VOLTS", new double[] {20, 24, 25, 23}, "lamp dead VOLTS", new double[4],
        "wire weak VOLTS", new double[] {22, 23, 22, 22}));
    AdviceText text = AdviceText.of(advice(alike, limit("21")).first().get(0));
    assertEquals("Add another check at `Volts`: no limit works in place of 21 V.", text.what());
    assertTrue(text.why().contains("a good unit reads 20 V here") && text.why().endsWith(
        "The readings of the two sides overlap."), text.why());
  }

  @Test
  void whatTheTextSilencesIsNotAskedFor() {
    Proof proof = LAMP.prove(limit("24.5"));
    assertEquals(new Advice(List.of(), 0), Advice.of(proof, List.of()));
  }

  @Test
  void aFaultThatNoUnitBringsToItsFindingIsNamedWithWhereItEnds() {
    MadeUp dead = new MadeUp(Map.of("healthy VOLTS", new double[] {26, 24, 25, 23}, "lamp dead VOLTS",
        new double[] {40, 40, 40, 40}, "wire weak VOLTS", new double[] {15, 17, 16, 18}));
    Proof proof = dead.prove(limit("20"));
    Recommendation find = Advice.of(proof, proof.problems().stream()
        .filter(problem -> problem.code().name().equals("fault-never-found")).toList()).first().get(0);
    assertInstanceOf(Recommendation.FindFault.class, find);
    assertEquals("Send `lamp dead` to the finding that names it.", AdviceText.of(find).what());
    assertTrue(AdviceText.of(find).why().contains("It ends at `Call`."), AdviceText.of(find).why());
  }

  @Test
  void whatCanHurtComesBeforeGoodUnitsSentWrongAndThoseBeforeTheRest() {
    Proof proof = LAMP.prove(limit("24.5"));
    Problem move = proof.problems().stream().filter(one -> one.code().name().equals("limit-unsound")).findFirst()
        .orElseThrow();
    List<Problem> mixed = List.of(problem("expectation-not-met"), problem("fault-found-wrongly"), move,
        problem("wrong-repair-unnoticed"), problem("prove-dead-tells-nothing"));
    assertEquals(
        List.of("prove-dead-tells-nothing", "limit-unsound", "wrong-repair-unnoticed", "fault-found-wrongly",
            "expectation-not-met"),
        Advice.of(proof, mixed).first().stream().map(one -> one.problem().code().name()).toList());
  }

  @Test
  void theStateIsOneOfCheckAndProofTogether() {
    Optional<Advice> none = Optional.of(new Advice(List.of(), 0));
    Optional<Advice> two = Optional.of(new Advice(List.of(new Recommendation.Correct(problem("answer-lacking")),
        new Recommendation.Correct(problem("answer-lacking"))), 3));
    List<Problem> warned = List.of(problem("answer-lacking"), problem("way-untaken"));
    List<Problem> wrong = List.of(problem("reading-gap"), problem("answer-lacking"));
    assertEquals("✕ 1 error", words(TreeState.of(wrong, two)));
    assertEquals("! 1 warning, not proved", words(TreeState.of(warned, Optional.empty())));
    assertEquals("○ Checked, not proved", words(TreeState.of(List.of(), Optional.empty())));
    assertEquals("! Proved, 3 things to do", words(TreeState.of(warned, two)));
    assertEquals("! Proved, 1 thing to do", words(TreeState.of(warned, none)));
    assertEquals("✓ Proved", words(TreeState.of(List.of(problem("way-untaken")), none)));
  }

  private static String words(TreeState state) {
    return state.symbol() + " " + state.words();
  }

  private static Problem problem(String code) {
    return Problem.at(Code.of(code), new Source("trees/one.md", "x"), new Span(0, 1));
  }
}
