package rungbook.cli.cache;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rungbook.library.LibraryText;
import rungbook.library.solving.Prover;
import rungbook.proof.plan.Budget;
import rungbook.report.Style;
import rungbook.source.Source;
import rungbook.source.TextLimits;
import rungbook.tree.Tree;

/** What one run takes from the cache and adds to it; nothing if it is to do without. */
public final class ProofCache implements Prover.KeptReadings {

  private final Optional<CacheFolder> folder;
  private final String run;
  private final String circuit;
  private final List<KeptProofs> kept = new ArrayList<>();

  /** @param circuit a hash of what a reading depends on besides its system; {@code run} of all that a proof does */
  private ProofCache(Optional<CacheFolder> folder, String circuit, String run) {
    this.folder = folder;
    this.circuit = circuit;
    this.run = run;
  }

  /**
   * @param place of the folder; empty for a run that does without
   * @param format and style in which proofs are printed
   */
  public static ProofCache of(Optional<Path> place, int samples, String format, Style style) {
    Optional<String> program = place.flatMap(folder -> ProgramDigest.ofThisProgram());
    String circuit = new KeyDigest().with(program.orElse("")).with(Budget.inForce().toString())
        .with(TextLimits.inForce().toString()).with(samples).key();
    String run = new KeyDigest().with(circuit).with(format).with(style.name()).key();
    return new ProofCache(place.filter(folder -> program.isPresent()).map(CacheFolder::new), circuit, run);
  }

  /** @param trees by id */
  public Optional<KeptProofs> of(LibraryText text, Function<String, Optional<Tree>> trees) {
    Optional<KeptProofs> found = folder.map(place -> new KeptProofs(place, run, text, trees));
    found.ifPresent(kept::add);
    return found;
  }

  @Override
  public Optional<byte[]> load(Source system) {
    return folder.flatMap(place -> place.load(key(system)));
  }

  @Override
  public void save(Source system, byte[] archive) {
    folder.ifPresent(place -> place.save(key(system), archive));
  }

  private String key(Source system) {
    return new KeyDigest().with(circuit).with("readings").with(system.name()).with(system.text()).key();
  }

  public void trim() {
    kept.forEach(KeptProofs::trim);
  }
}
