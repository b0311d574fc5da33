package rungbook.circuit.export;

/**
 * What the variants of a system share.
 *
 * @param names keys of parts, conductors, controls and the like
 * @param nodes each by the first of its terminals; number 0 is ground
 * @param branches what {@link CircuitVariant} writes of each
 * @param cases what {@link CaseForm} writes of each
 * @param pieces anything else, such as a load
 */
record Pools(Interned names, Interned nodes, Interned branches, Interned cases, Interned pieces,
    Quantities quantities) {

  static Pools of(int installations, Interned names) {
    var nodes = new Interned();
    nodes.of("ground");
    return new Pools(names, nodes, new Interned(), new Interned(), new Interned(),
        new Quantities(installations));
  }
}
