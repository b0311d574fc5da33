package rungbook.library;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import rungbook.markdown.Document;
import rungbook.proof.Proving;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.ProblemList;
import rungbook.source.Quiet;
import rungbook.tree.Step;
import rungbook.tree.Tree;
import rungbook.tree.reader.QuietReader;

/** Sets apart the problems that the texts of a tree, or the shared texts, silence. */
public final class Silencing {

  private Silencing() {}

  /**
   * What a check found in a tree.
   *
   * @param problems in reading order
   */
  static ProblemList ofCheck(Tree tree, List<Problem> problems) {
    return ofCheck(documents(tree), problems, quiet -> quiet.source() == tree.source());
  }

  /**
   * What a check found in texts that trees share. A fragment's lines are judged with the trees that take it in.
   *
   * @param problems in reading order
   */
  static ProblemList ofShared(Collection<Document> shared, List<Problem> problems) {
    ProblemList list = ofCheck(shared, problems, quiet -> !isInFragment(quiet));
    return new ProblemList(list.shown(), list.silenced(), List.of());
  }

  private static boolean isInFragment(Quiet quiet) {
    return quiet.source().name().startsWith("shared/fragments/");
  }

  /** @param judged the lines of which is known here whether they silence anything */
  private static ProblemList ofCheck(Collection<Document> documents, List<Problem> problems, Predicate<Quiet> judged) {
    List<QuietReader.Read> read = read(documents);
    if (read.isEmpty()) {
      return ProblemList.of(problems);
    }
    Set<Code> proofs = Proving.codes();
    ProblemList list = ProblemList.of(problems, quiets(read, quiet -> !proofs.contains(quiet.code())));
    var more = new ArrayList<Problem>(list.unused(judged));
    read.forEach(one -> more.addAll(one.problems()));
    return list.and(more);
  }

  /** What a proof found; a line that silences nothing is a problem only where the tree is proved. */
  public static ProblemList ofProof(Tree tree, Proving.Result result) {
    List<QuietReader.Read> read = read(documents(tree));
    if (read.isEmpty()) {
      return ProblemList.of(result.problems());
    }
    Set<Code> proofs = Proving.codes();
    ProblemList list = ProblemList.of(result.problems(), quiets(read, quiet -> proofs.contains(quiet.code())));
    return list.and(result.proved().isEmpty() ? List.of()
        : list.unused(quiet -> quiet.source() == tree.source()));
  }

  private static List<QuietReader.Read> read(Collection<Document> documents) {
    return documents.stream().map(QuietReader::read).filter(read -> !read.isEmpty()).toList();
  }

  private static List<Quiet> quiets(List<QuietReader.Read> read, Predicate<Quiet> wanted) {
    return read.stream().flatMap(one -> one.quiets().stream()).filter(wanted).toList();
  }

  /** A tree's own text and those of the fragments it takes in. */
  private static Set<Document> documents(Tree tree) {
    Set<Document> documents = identities();
    documents.add(tree.document());
    for (Step step : tree.steps()) {
      documents.add(step.header().document());
    }
    return documents;
  }

  private static Set<Document> identities() {
    return Collections.newSetFromMap(new IdentityHashMap<>()); // equality of documents looks at all their words
  }
}
