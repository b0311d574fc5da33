package rungbook.circuit;

import rungbook.system.Terminal;

/** Where a meter is put and how it is set. A clamp goes around the wire that ends at {@code red}; {@code black} is then the same. */
public record Probe(Meter meter, Terminal red, Terminal black) {}
