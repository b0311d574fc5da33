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
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungbook.circuit.network.Samples;
import rungbook.library.CompiledTree;
import rungbook.library.Silencing;
import rungbook.library.practice.PracticePages;
import rungbook.library.solving.Prover;
import rungbook.library.solving.FactsFinder;
import rungbook.pack.LibraryFolder;
import rungbook.pack.Pack;
import rungbook.pack.PackFile;
import rungbook.pack.PackedTree;
import rungbook.pack.book.Book;
import rungbook.pack.onefile.LibraryFile;
import rungbook.pack.page.Digest;
import rungbook.pack.page.Edition;
import rungbook.pack.page.FileNames;
import rungbook.pack.page.PackInput;
import rungbook.pack.practice.PracticePage;
import rungbook.pack.signature.SigningKey;
import rungbook.proof.Proving;
import rungbook.proof.advice.ProofSummary;
import rungbook.report.Digits;
import rungbook.report.TextReport;
import rungbook.source.Severity;

@Command(name = "pack", description = "Make trees into files that work on a phone with no signal",
    footer = {"", "A folder becomes packs with an index; single files become packs that travel alone.",
        "With --library they become one page, with --book one book. If there is an error, nothing is written."})
final class PackCommand implements Callable<Integer> {

  private final Console terminal;

  @Parameters(paramLabel = "PATH", arity = "1..*", description = "a tree, a folder of trees, or a whole library")
  private List<String> paths;

  @Option(names = "--to", paramLabel = "FOLDER", description = "where the packs go (default: export)")
  private Optional<String> to = Optional.empty();

  @Option(names = "--library", paramLabel = "FILE",
      description = "instead of packs: one HTML file of all the trees, for phones that open one file at a time")
  private Optional<String> library = Optional.empty();

  @Option(names = "--book", paramLabel = "FILE",
      description = "instead of packs: one EPUB book of all the trees, for readers that open books")
  private Optional<String> book = Optional.empty();

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
    Optional<Path> single = singleFile();
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
    Function<CompiledTree, Edition> editions = proved ? editions(compiled) : tree -> Edition.draft();
    if (single.isPresent()) {
      writeOne(single.get(), together(compiled, editions), signing);
    } else {
      List<PackFile> files = files(compiled, packs(compiled, editions));
      write(terminal.folder().resolve(to.orElse("export")), signing.map(with -> with.signed(files)).orElse(files));
    }
    return 0;
  }

  /** The file that is written instead of a folder. */
  private Optional<Path> singleFile() {
    if (Stream.of(to, library, book).filter(Optional::isPresent).count() > 1) {
      throw new UsageError("only one of `--to`, `--library` and `--book` can be there",
          "name a folder for packs, or a file for all the trees");
    }
    Optional<Path> page = library.map(written -> file(written, FileNames.ENDING, "a page", "browser"));
    return page.or(() -> book.map(written -> file(written, Book.ENDING, "a book", "reader")));
  }

  private Path file(String written, String ending, String kind, String opener) {
    Path file = InputFiles.newFile(written, terminal);
    if (!file.toString().endsWith(ending)) {
      throw new UsageError("`" + written + "` is not the name of " + kind,
          "end it in `" + ending + "`, so that a phone opens it with its " + opener);
    }
    return file;
  }

  /**
   * Packs the trees as they were checked; nothing is read again.
   *
   * @param editions with what each pack says of its proof
   */
  static List<Pack> packs(Checker.Compiled compiled, Function<CompiledTree, Edition> editions) {
    PackInput material = new PackInput(compiled.shared(), compiled.text().pictures());
    FactsFinder facts = new FactsFinder();
    return compiled.trees().stream().map(tree -> Pack.of(tree.tree(), facts.of(tree.tree(), compiled.text()),
        material, editions.apply(tree))).toList();
  }

  /**
   * All trees in one file.
   *
   * @param bytes do not modify
   */
  private record Together(String digest, byte[] bytes) {}

  private Together together(Checker.Compiled compiled, Function<CompiledTree, Edition> editions) {
    PackInput material = new PackInput(compiled.shared(), compiled.text().pictures());
    FactsFinder facts = new FactsFinder();
    List<PackedTree> trees = compiled.trees().stream().map(tree -> PackedTree.of(tree.tree(),
        facts.of(tree.tree(), compiled.text()), material, editions.apply(tree))).toList();
    if (book.isPresent()) {
      Book made = Book.of(trees, List.of(), material);
      return new Together(made.digest(), made.bytes());
    }
    LibraryFile made = LibraryFile.of(trees, List.of(), material);
    return new Together(made.digest(), made.bytes());
  }

  private static Function<CompiledTree, Edition> editions(Checker.Compiled compiled) {
    Map<String, CompiledTree> trees = compiled.trees().stream()
        .collect(Collectors.toMap(tree -> tree.tree().id(), tree -> tree));
    Prover prover = new Prover(Samples.USUAL);
    return tree -> {
      Proving.Result result = prover.prove(tree.tree(), compiled.text(),
          id -> Optional.ofNullable(trees.get(id)).map(CompiledTree::tree));
      return Edition.draft().proved(ProofSummary.words(tree.problems(), result.proved(),
          Silencing.ofProof(tree.tree(), result).shown()));
    };
  }

  private List<PackFile> files(Checker.Compiled compiled, List<Pack> packs) {
    boolean folder = paths.stream().anyMatch(path -> Files.isDirectory(terminal.folder().resolve(path)));
    return folder ? LibraryFolder.of(packs, List.of(), practice(compiled)) : packs.stream().map(Pack::alone).toList();
  }

  private static List<PracticePage> practice(Checker.Compiled compiled) {
    return PracticePages.of(compiled.trees().stream().map(CompiledTree::tree).toList(), compiled.shared(),
        compiled.text());
  }

  private void writeOne(Path to, Together made, Optional<SigningKey> signing) throws IOException {
    PackFile file = new PackFile(to.getFileName().toString(), made.bytes());
    write(Objects.requireNonNull(to.toAbsolutePath().getParent(), "a file is in a folder"),
        signing.map(with -> List.of(file, with.signature(file))).orElse(List.of(file)));
    terminal.out().println("digest " + Digest.grouped(made.digest()));
  }

  private void write(Path to, List<PackFile> files) throws IOException {
    Path folder = Files.createDirectories(to);
    var lines = new ArrayList<String>();
    for (PackFile file : files) {
      replace(folder.resolve(file.name()), file.bytes());
      lines.add(terminal.shown(folder.resolve(file.name())) + ", " + Digits.grouped((file.bytes().length + 1023) / 1024)
          + " KB");
    }
    lines.forEach(terminal.out()::println);
  }

  /** Replaces a file atomically: leaves no partial pack, and replaces a symbolic link instead of following it. */
  static void replace(Path file, byte[] bytes) throws IOException {
    Path part = file.resolveSibling("." + file.getFileName() + ".part");
    Files.deleteIfExists(part);
    Files.write(part, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    Files.move(part, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
  }
}
