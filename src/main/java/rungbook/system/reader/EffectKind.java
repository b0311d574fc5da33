package rungbook.system.reader;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.system.Effect;
import rungbook.system.Part;

/**
 * The effects, and the kinds of part that can have each. A part cannot have an effect that would change nothing,
 * because no check can find a fault that changes nothing.
 */
@SuppressWarnings("ImmutableEnumChecker") // List.of and Class are immutable
enum EffectKind {
  OPEN("opened", "open %s", Part.Supply.class, Part.Fuse.class, Part.Switch.class, Part.Cable.class, Part.Wire.class,
      Part.Transformer.class, Part.Load.class, Part.Capacitor.class),
  /** Not for conductors: two conductors that touch are {@link Effect.Join}. */
  SHORT("shorted", "short %s", Part.Supply.class, Part.Fuse.class, Part.Switch.class, Part.Transformer.class,
      Part.Load.class,
      Part.Capacitor.class),
  RAISE("raised", "raise %s by 5 ohm", Part.Supply.class, Part.Fuse.class, Part.Switch.class, Part.Cable.class,
      Part.Wire.class,
      Part.Transformer.class, Part.Load.class, Part.Capacitor.class),
  HOLD("held", "hold %s open", Part.Switch.class),
  STOP("stopped", "stop %s", Part.Load.class, Part.State.class),
  CROSS("crossed", "cross %s with CONDUCTOR", Part.Cable.class, Part.Wire.class),
  WEAKEN("weakened by a factor", "weaken %s 2 times", Part.Transformer.class),
  DERATE("weakened to a percentage", "weaken %s to 50 to 80 %%", Part.Capacitor.class),
  OVERLOAD("overloaded", "overload %s to 120 to 160 %%", Part.Load.class),
  STIFFEN("stiffened", "stiffen %s to 20 to 26 V", Part.Load.class),
  TAP("tapped", "tap %s for 208 V", Part.Transformer.class),
  LOWER("lowered", "lower %s to 85 to 95 V", Part.Supply.class);

  private final String done;
  private final String form;
  private final List<Class<? extends Part>> parts;

  @SafeVarargs
  EffectKind(String done, String form, Class<? extends Part>... parts) {
    this.done = done;
    this.form = form;
    this.parts = List.of(parts);
  }

  boolean fits(Part part) {
    return parts.stream().anyMatch(kind -> kind.isInstance(part));
  }

  /** What the effect does to a part, as a participle: {@code held}. */
  String done() {
    return done;
  }

  /**
   * The effects that a part can have, as the text writes them: {@code `open control fuse`, `short control fuse`}.
   *
   * @param name of the part or branch
   */
  static String instead(Part part, String name) {
    String fit = Stream.of(values()).filter(kind -> kind.fits(part))
        .map(kind -> "`" + String.format(kind.form, name) + "`")
        .collect(Collectors.joining(", "));
    return fit.isEmpty() ? "an effect on a wire that ends there" : fit;
  }
}
