package rungbook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungbook.circuit.network.Samples;
import rungbook.proof.pairs.PairBounds;

@Command(name = "prove", description = "Follow trees through the simulated circuit of their system, with each fault",
    footer = {"", "exit code: 0 clean (notes are allowed), 1 problems, or nothing was proved, 2 misuse"})
final class Prove implements Callable<Integer> {

  private static final int MOST_SAMPLES = 10_000;

  /** Those of 2,000 faults, which a system has at most. */
  private static final int MOST_PAIRS = 1_999_000;

  private final Console terminal;

  @Parameters(paramLabel = "PATH", arity = "1..*", description = "a tree, a folder of trees, or a whole library")
  private List<String> paths;

  @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text",
      description = "text for people (the default), json or sarif for programs")
  private String format;

  @Option(names = "--samples", paramLabel = "N", defaultValue = "" + Samples.USUAL,
      description = "installations to draw at random (default: ${DEFAULT-VALUE})")
  private int samples;

  @Option(names = "--against", paramLabel = "EARLIER", defaultValue = "",
      description = "an earlier text of the tree, or a folder with a copy of the trees: say which faults end elsewhere")
  private String against;

  @Option(names = "--no-cache", description = "prove everything anew, and keep nothing for the next run")
  private boolean withoutCache;

  @Option(names = "--pairs",
      description = "also follow every two faults at once, on " + PairBounds.USUAL_DRAWN + " installations")
  private boolean pairs;

  @Option(names = "--most-pairs", paramLabel = "N", defaultValue = "" + PairBounds.USUAL_PAIRS,
      description = "with --pairs, only the likeliest pairs of a system (default: ${DEFAULT-VALUE})")
  private int mostPairs;

  @Option(names = {"-h", "--help"}, usageHelp = true, description = "show this help")
  @SuppressWarnings("unused") // the command line parser acts on it
  private boolean help;

  Prove(Console terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Format wanted = Format.named(format);
    if (samples < 1 || samples > MOST_SAMPLES) {
      throw new UsageError("`--samples " + samples + "` cannot be drawn", "write a number from 1 to " + MOST_SAMPLES);
    }
    if (mostPairs < 1 || mostPairs > MOST_PAIRS) {
      throw new UsageError("`--most-pairs " + mostPairs + "` cannot be followed",
          "write a number from 1 to " + MOST_PAIRS);
    }
    Collection<Path> trees = InputFiles.files(paths, terminal).stream().filter(file -> !Batch.isShared(file)).toList();
    if (trees.isEmpty()) {
      throw new UsageError("there is no tree to prove", "name a tree, or a folder that contains trees");
    }
    var extras = new ProveRun.Extras(earlier(trees), bounds());
    ProveRun proved = ProveRun.of(trees, withoutCache || extras.any() ? terminal.withoutCache() : terminal, samples,
        wanted, extras);
    terminal.out().print(proved.print(wanted, terminal.style()));
    terminal.out().flush();
    if (proved.proofs().isEmpty()) {
      terminal.err().println("nothing was proved");
      return 1;
    }
    return proved.report().isClean() ? 0 : 1;
  }

  private Optional<PairBounds> bounds() {
    return pairs ? Optional.of(new PairBounds(mostPairs, PairBounds.USUAL_DRAWN)) : Optional.empty();
  }

  private Optional<Path> earlier(Collection<Path> trees) throws IOException {
    if (against.isEmpty()) {
      return Optional.empty();
    }
    Path path = InputFiles.path(against, terminal);
    if (Files.isDirectory(path)) {
      return Optional.of(path);
    }
    if (!against.endsWith(".md") || !Files.isRegularFile(path)) {
      throw new UsageError("`" + against + "` is not a tree",
          "name a file that ends in `.md`, or a folder with a copy of the trees");
    }
    if (trees.size() > 1) {
      throw new UsageError("`" + against + "` is one tree, and " + trees.size() + " are proved",
          "prove the one that it was, or name a folder with a copy of the trees");
    }
    return Optional.of(path);
  }
}
