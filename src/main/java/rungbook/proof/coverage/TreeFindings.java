package rungbook.proof.coverage;

import java.util.List;
import rungbook.proof.report.Complaint;
import rungbook.proof.report.Journey;
import rungbook.proof.report.Proof;
import rungbook.tree.Tree;

/**
 * What the coverage of a library needs of a tree's proof: a small part of it, so that it can be kept for every tree.
 *
 * @param journeys where every case ends through all trees that take over, the healthy system first
 */
public record TreeFindings(Tree tree, Complaint complaint, List<Journey> journeys) {

  public TreeFindings {
    journeys = List.copyOf(journeys);
  }

  public static TreeFindings of(Proof proof) {
    return new TreeFindings(proof.tree(), proof.complaint(), proof.journeys());
  }
}
