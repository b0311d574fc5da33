/**
 * Dataflow analysis over the paths of a tree. Facts are bits; {@link rungbook.rules.flow.DataflowSolver} propagates
 * sets of them along the ways on and joins them where ways meet (a powerset lattice, as in Strom and Yemini's
 * typestate), so a tree costs one visit per way, however many paths it has. {@link rungbook.rules.flow.FactTable}
 * numbers the facts of a tree, {@link rungbook.rules.flow.PathFacts} says which of them may hold and which must hold at
 * a step. A path that shows a result is searched for only on request.
 */
package rungbook.rules.flow;
