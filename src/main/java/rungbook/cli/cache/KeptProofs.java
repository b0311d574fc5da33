package rungbook.cli.cache;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import rungbook.library.LibraryText;
import rungbook.proof.plan.TreeClaims;
import rungbook.source.Problem;
import rungbook.source.ProblemList;
import rungbook.source.Source;
import rungbook.tree.Tree;

/** The proofs of the trees of one library that earlier runs have made, and what they found wrong with its systems. */
public final class KeptProofs {

  private static final String SHARED = "shared/";

  private final CacheFolder folder;
  private final String run;
  private final LibraryText text;
  private final Function<String, Optional<Tree>> trees;
  private final Map<String, Optional<TreeClaims>> claims = new HashMap<>();
  private final Map<String, Optional<String>> hashes = new HashMap<>();
  private final String sharedTexts;
  private boolean isChanged;

  /** Another tree whose steps a proof followed; empty if there is none. */
  private record Followed(String id, Optional<String> hash) {}

  /** Another tree whose findings a proof asked for: another text may claim the same. */
  private record Claimed(String id, Optional<String> hash, Optional<TreeClaims> claims) {}

  private record Entry(List<Followed> followed, List<Claimed> claimed, ProvedTree proved) {}

  /**
   * @param run a hash of the program and its settings
   * @param trees by id
   */
  public KeptProofs(CacheFolder folder, String run, LibraryText text,
      Function<String, Optional<Tree>> trees) {
    this.folder = folder;
    this.run = run;
    this.text = text;
    this.trees = trees;
    var shared = new KeyDigest();
    text.texts().forEach((name, source) -> {
      if (name.startsWith(SHARED)) {
        shared.with(name).with(source.text());
      }
    });
    text.in("trees/").keySet().forEach(shared::with);
    sharedTexts = shared.key();
  }

  /**
   * Hashes the tree's own text, and all that trees share with the names of all trees: which of these a tree takes is
   * known only when it is read.
   */
  private String key(String path, String shown) {
    return new KeyDigest().with(run).with("tree").with(path).with(shown).with(source(path).text()).with(sharedTexts)
        .key();
  }

  private Source source(String path) {
    return Objects.requireNonNull(text.texts().get(path), path);
  }

  /**
   * What an earlier run found, if every tree that it asked for is as it was.
   *
   * @param path of the tree in the library
   * @param shown the path of its file for display
   */
  public Optional<ProvedTree> load(String path, String shown) {
    return folder.load(key(path, shown)).flatMap(bytes -> read(bytes, text.texts(), Entry.class))
        .filter(this::isOfTheseTrees).map(Entry::proved);
  }

  private boolean isOfTheseTrees(Entry entry) {
    return entry.followed().stream().allMatch(one -> one.hash().equals(hash(one.id())))
        && entry.claimed().stream()
            .allMatch(one -> one.hash().equals(hash(one.id())) || one.claims().equals(claims(one.id())));
  }

  /**
   * @param followed ids of the other trees whose steps its proof asked for
   * @param claimed ids of those whose findings it asked for
   */
  public void save(String path, String shown, Set<String> followed, Set<String> claimed, ProvedTree proved) {
    save(key(path, shown), new Entry(followed.stream().map(id -> new Followed(id, hash(id))).toList(),
        claimed.stream().map(id -> new Claimed(id, hash(id), claims(id))).toList(), proved), text.texts());
  }

  /** What a tree can find; a tree is read only if no earlier run knew it. */
  public Optional<TreeClaims> claims(String id) {
    return claims.computeIfAbsent(id, tree -> ofTree(tree).flatMap(source -> {
      String key = new KeyDigest().with(run).with("claims").with(source.name()).with(source.text()).with(sharedTexts)
          .key();
      return folder.load(key).flatMap(bytes -> read(bytes, Map.of(), TreeClaims.class)).or(() -> {
        Optional<TreeClaims> found = trees.apply(tree).map(TreeClaims::of);
        found.ifPresent(value -> save(key, value, Map.of()));
        return found;
      });
    }));
  }

  private Optional<Source> ofTree(String id) {
    return Optional.ofNullable(text.texts().get("trees/" + id + ".md"));
  }

  private Optional<String> hash(String id) {
    return hashes.computeIfAbsent(id, tree -> ofTree(tree).map(source -> new KeyDigest().with(source.text()).key()));
  }

  /** What an earlier run found wrong with a system. */
  public Optional<List<Problem>> systemProblems(String id) {
    return ofSystem(id).flatMap(source -> folder.load(key(source))
        .flatMap(bytes -> read(bytes, Map.of(source.name(), source), ProblemList.class))).map(ProblemList::shown);
  }

  /** A problem that is not in the system's own text, as when the search failed, is not kept. */
  public void saveSystemProblems(String id, List<Problem> problems) {
    ofSystem(id)
        .ifPresent(source -> save(key(source), ProblemList.of(problems), Map.of(source.name(), source)));
  }

  private Optional<Source> ofSystem(String id) {
    return Optional.ofNullable(text.texts().get(SHARED + "systems/" + id + ".md"));
  }

  private String key(Source system) {
    return new KeyDigest().with(run).with("system").with(system.name()).with(system.text()).key();
  }

  private static <T> Optional<T> read(byte[] bytes, Map<String, Source> sources, Class<T> type) {
    try {
      return Optional.of(new ValueReader(bytes, sources).read(type));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private void save(String key, Object value, Map<String, Source> sources) {
    try {
      folder.save(key, new ValueWriter(sources).write(value).bytes());
      isChanged = true;
    } catch (IOException e) {
      // it is made again the next time
    }
  }

  /** Keeps the folder from growing. */
  public void trim() {
    if (isChanged) {
      folder.trim();
    }
  }
}
