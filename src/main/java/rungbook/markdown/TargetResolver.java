package rungbook.markdown;

import com.vladsch.flexmark.ast.AutoLink;
import com.vladsch.flexmark.html.AttributeProvider;
import com.vladsch.flexmark.html.IndependentAttributeProviderFactory;
import com.vladsch.flexmark.html.LinkResolver;
import com.vladsch.flexmark.html.LinkResolverFactory;
import com.vladsch.flexmark.html.renderer.AttributablePart;
import com.vladsch.flexmark.html.renderer.LinkResolverBasicContext;
import com.vladsch.flexmark.html.renderer.LinkResolverContext;
import com.vladsch.flexmark.html.renderer.LinkStatus;
import com.vladsch.flexmark.html.renderer.LinkType;
import com.vladsch.flexmark.html.renderer.ResolvedLink;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.html.MutableAttributes;
import java.util.Optional;
import java.util.Set;
import rungbook.markdown.Prose.Targets;

/** Sends every link and picture through {@link Targets}. */
final class TargetResolver implements LinkResolver {

  // an address that no text can hold, so that a target which leads nowhere is told from one that was allowed
  private static final String NOWHERE = "\uE000";
  private final Targets targets;

  private TargetResolver(Targets targets) {
    this.targets = targets;
  }

  @Override
  public ResolvedLink resolveLink(Node node, LinkResolverBasicContext context, ResolvedLink link) {
    boolean isPicture = link.getLinkType() == LinkType.IMAGE || link.getLinkType() == LinkType.IMAGE_REF;
    Optional<String> allowed = isPicture ? targets.picture(link.getUrl()) : targets.link(link.getUrl());
    return link.withStatus(LinkStatus.VALID).withUrl(allowed.orElse(NOWHERE));
  }

  /** @param targets where links may lead */
  record Factory(Targets targets) implements LinkResolverFactory {
    @Override
    public LinkResolver apply(LinkResolverBasicContext context) {
      return new TargetResolver(targets);
    }

    @Override
    public Set<Class<?>> getAfterDependents() {
      return null;
    }

    @Override
    public Set<Class<?>> getBeforeDependents() {
      return null;
    }

    @Override
    public boolean affectsGlobalScope() {
      return false;
    }
  }

  /** Takes the address off what leads nowhere. */
  static final class DeadLinks extends IndependentAttributeProviderFactory {
    @Override
    public AttributeProvider apply(LinkResolverContext context) {
      return DeadLinks::clean;
    }

    private static void clean(Node node, AttributablePart part, MutableAttributes attributes) {
      for (String name : Set.of("href", "src")) {
        if (attributes.contains(name) && attributes.getValue(name).contains(NOWHERE) || node instanceof AutoLink && name.equals("src")) {
          attributes.remove(name);
        }
      }
    }
  }
}
