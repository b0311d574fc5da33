package rungbook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungbook.circuit.network.Samples;
import rungbook.library.CompiledTree;
import rungbook.library.Prover;
import rungbook.library.Silencing;
import rungbook.library.VoltageFinder;
import rungbook.pack.LibraryFolder;
import rungbook.pack.Pack;
import rungbook.pack.PackFile;
import rungbook.pack.page.Edition;
import rungbook.pack.page.PackInput;
import rungbook.pack.signature.SigningKey;
import rungbook.proof.Proving;
import rungbook.proof.advice.ProofSummary;
import rungbook.report.Digits;
import rungbook.report.TextReport;
import rungbook.source.Severity;

@Command(name = "pack", description = "Make trees into files that work on a phone with no signal",
    footer = {"", "A folder becomes packs with an index; single files become packs that travel alone.",
        "If there is an error, nothing is written."})
final class PackCommand implements Callable<Integer> {

  private final Console terminal;

  @Parameters(paramLabel = "PATH", arity = "1..*", description = "a tree, a folder of trees, or a whole library")
  private List<String> paths;

  @Option(names = "--to", paramLabel = "FOLDER", defaultValue = "export",
      description = "where the packs go (default: export)")
  private String to;

  @Option(names = "--sign", paramLabel = "KEY",
      description = "the company's .key file: writes a signature beside each pack")
  private Optional<String> key = Optional.empty();

  @Option(names = "--proved",
      description = "prove each tree first, and print in its pack what it was proved on and how much it finds")
  private boolean proved;

  @Option(names = {"-h", "--help"}, usageHelp = true, description = "show this help")
  @SuppressWarnings("unused") // the command line parser acts on it
  private boolean help;

  PackCommand(Console terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Optional<SigningKey> signing = key.isPresent() ? Optional.of(KeyFiles.signing(key.get(), terminal))
        : Optional.empty();
    Collection<Path> trees = InputFiles.files(paths, terminal).stream().filter(file -> !Batch.isShared(file)).toList();
    Collection<Batch> batches = Batch.of(trees, terminal.home());
    if (batches.size() != 1) {
      throw new UsageError(trees.isEmpty() ? "there is no tree to pack" : "these trees are in different folders",
          "pack one library or folder at a time");
    }
    Checker.Compiled compiled = Checker.compile(batches.iterator().next(), terminal);
    if (compiled.report().count(Severity.ERROR) > 0) {
      terminal.out().print(TextReport.of(compiled.report(), terminal.style()));
      terminal.out().println("nothing packed: fix the errors first");
      return 1;
    }
    List<PackFile> files = files(packs(compiled, proved ? summaries(compiled) : tree -> Optional.empty()));
    write(signing.map(with -> with.signed(files)).orElse(files));
    return 0;
  }

  /**
   * Packs the trees as they were checked; nothing is read again.
   *
   * @param proofs what each pack says of its proof
   */
  static List<Pack> packs(Checker.Compiled compiled, Function<CompiledTree, Optional<String>> proofs) {
    PackInput material = new PackInput(compiled.shared(), compiled.text().pictures());
    VoltageFinder voltages = new VoltageFinder();
    return compiled.trees().stream().map(tree -> Pack.of(tree.tree(), voltages.of(tree.tree(), compiled.text()),
        material, proofs.apply(tree).map(Edition.draft()::proved).orElse(Edition.draft()))).toList();
  }

  private static Function<CompiledTree, Optional<String>> summaries(Checker.Compiled compiled) {
    Map<String, CompiledTree> trees = compiled.trees().stream()
        .collect(Collectors.toMap(tree -> tree.tree().id(), tree -> tree));
    Prover prover = new Prover(Samples.USUAL);
    return tree -> {
      Proving.Result result = prover.prove(tree.tree(), compiled.text(),
          id -> Optional.ofNullable(trees.get(id)).map(CompiledTree::tree));
      return Optional.of(ProofSummary.words(tree.problems(), result.proved(),
          Silencing.ofProof(tree.tree(), result).shown()));
    };
  }

  private List<PackFile> files(List<Pack> packs) {
    boolean folder = paths.stream().anyMatch(path -> Files.isDirectory(terminal.folder().resolve(path)));
    return folder ? LibraryFolder.of(packs) : packs.stream().map(Pack::alone).toList();
  }

  private void write(List<PackFile> files) throws IOException {
    Path folder = Files.createDirectories(terminal.folder().resolve(to));
    var lines = new ArrayList<String>();
    for (PackFile file : files) {
      replace(folder.resolve(file.name()), file.bytes());
      lines.add(terminal.shown(folder.resolve(file.name())) + ", " + Digits.grouped((file.bytes().length + 1023) / 1024)
          + " KB");
    }
    lines.forEach(terminal.out()::println);
  }

  /** Replaces a file atomically: leaves no partial pack, and replaces a symbolic link instead of following it. */
  private static void replace(Path file, byte[] bytes) throws IOException {
    Path part = file.resolveSibling("." + file.getFileName() + ".part");
    Files.deleteIfExists(part);
    Files.write(part, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    Files.move(part, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
  }
}
