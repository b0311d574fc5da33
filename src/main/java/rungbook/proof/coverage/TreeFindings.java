package rungbook.proof.coverage;

import java.util.List;
import java.util.Optional;
import rungbook.proof.report.Complaint;
import rungbook.proof.report.Journey;
import rungbook.proof.report.Proof;
import rungbook.system.Vocabulary;

/**
 * What the coverage of a library needs of a tree's proof: a small part of it, so that it can be kept for every tree.
 *
 * @param system its id; {@code systemTitle} its title
 * @param tree its id; {@code title} its title
 * @param words the complaint in the system's words; empty if the tree does not say it
 * @param likelihood the share of the system's likelihood that shows it
 * @param faults of the system, in its order
 * @param journeys of the cases that show the complaint, the healthy system first
 */
public record TreeFindings(String system, String systemTitle, String tree, String title, Optional<String> words,
    double likelihood, List<Complaint.Shown> faults, List<Journey> journeys) {

  public TreeFindings {
    faults = List.copyOf(faults);
    journeys = List.copyOf(journeys);
  }

  /** A tree that was proved has a system. */
  public static TreeFindings of(Proof proof) {
    Complaint complaint = proof.complaint();
    Vocabulary system = proof.tree().system().orElseThrow();
    return new TreeFindings(system.id(), system.title(), proof.tree().id(), proof.tree().title(),
        complaint.symptoms().map(Complaint::words), complaint.likelihood(), complaint.faults(), proof.journeys());
  }
}
