package rungbook.pack.page;

import java.util.Map;
import rungbook.tree.Shared;

/**
 * What a pack is made of besides its tree.
 *
 * @param shared the library's cautions and the ids of its trees
 * @param pictures by path in the library, {@code trees/pictures/board.svg}
 */
public record PackInput(Shared shared, Map<String, byte[]> pictures) {}
