package rungbook.cli.cache;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import rungbook.proof.plan.OtherTrees;
import rungbook.proof.plan.TreeClaims;
import rungbook.tree.Tree;

/** The other trees, as one proof asks for them. */
public final class AskedTrees implements OtherTrees {

  private final Function<String, Optional<Tree>> trees;
  private final Function<String, Optional<TreeClaims>> claims;
  private final Set<String> followed = new TreeSet<>();
  private final Set<String> claimed = new TreeSet<>();

  public AskedTrees(Function<String, Optional<Tree>> trees, Function<String, Optional<TreeClaims>> claims) {
    this.trees = trees;
    this.claims = claims;
  }

  @Override
  public Optional<Tree> tree(String id) {
    followed.add(id);
    return trees.apply(id);
  }

  @Override
  public Optional<TreeClaims> claims(String id) {
    claimed.add(id);
    return claims.apply(id);
  }

  /** Ids of the trees whose steps it asked for. */
  public Set<String> followed() {
    return followed;
  }

  /** Ids of the trees whose findings it asked for. */
  public Set<String> claimed() {
    return claimed;
  }
}
