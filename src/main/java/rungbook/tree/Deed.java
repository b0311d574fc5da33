package rungbook.tree;

import java.util.Optional;

/**
 * One thing done to one thing: {@code bypass: door switch}.
 *
 * @param setting for {@link Verb#SET}, the control and its position, where they could be told apart
 */
public record Deed(Verb verb, Named thing, Optional<Setting> setting) {}
