package rungbook.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import rungbook.proof.handover.Journeys;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.propagation.End;
import rungbook.proof.report.Journey;
import rungbook.proof.report.Journey.Fate;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;

/** Adds up where every case ends through all trees. */
public final class JourneySummary {

  private final ProofContext context;
  private final Journeys journeys;
  private final List<String> names;

  /** @param names of the cases, as the system writes them */
  public JourneySummary(ProofContext context, Journeys journeys, List<String> names) {
    this.context = context;
    this.journeys = journeys;
    this.names = names;
  }

  public List<Journey> all() {
    return Arrays.stream(context.population().cases()).mapToObj(this::journey).toList();
  }

  private Journey journey(int caseNumber) {
    var places = new ArrayList<Journey.Place>();
    journeys.arrivals().forEach(one -> add(places, place(one, caseNumber)));
    journeys.circles().forEach(circle -> add(places, new Journey.Place(Fate.IN_A_CIRCLE, circle.through().tree(),
        circle.back().tree(), String.join(" -> ", circle.trees()), circle.shares()[caseNumber])));
    journeys.lost().forEach(lost -> add(places, new Journey.Place(Fate.NOT_FOLLOWED, lost.through().tree(),
        lost.other().tree(), lost.other().tree(), lost.shares()[caseNumber])));
    places.sort(Comparator.comparingDouble((Journey.Place place) -> -place.share()));
    return new Journey(names.get(caseNumber), places, journeys.checks()[caseNumber], journeys.minutes()[caseNumber]);
  }

  private static void add(List<Journey.Place> places, Journey.Place place) {
    if (place.share() > 0) {
      places.add(place);
    }
  }

  private Journey.Place place(Journeys.Arrival arrival, int caseNumber) {
    Step step = arrival.tree().steps().get(((End.AtStep) arrival.arrivals().end()).step());
    return new Journey.Place(fate(arrival.arrivals().end(), arrival.tree(), caseNumber),
        arrival.through().map(Target.ToTree::tree).orElse(""), arrival.tree().id(), step.title(),
        arrival.arrivals().shares()[caseNumber]);
  }

  private Fate fate(End end, Tree tree, int caseNumber) {
    if (end instanceof End.Ended) {
      return Fate.REFERRED;
    }
    if (!(end instanceof End.Finding at)) {
      return Fate.STUCK;
    }
    Step.Finding finding = (Step.Finding) tree.steps().get(at.step());
    if (finding.healthy()) {
      return Fate.HEALTHY;
    }
    boolean isNamed = context.findings().named(finding).get(caseNumber);
    return finding.faults().isEmpty() ? Fate.REFERRED : isNamed ? Fate.FOUND : Fate.MISTAKEN;
  }
}
