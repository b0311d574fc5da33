/**
 * What holds along the paths of a tree. Facts are bits; {@link rungbook.rules.flow.DataflowSolver} carries sets of them
 * over the ways on and joins them where ways meet (a powerset lattice, in the sense of Strom and Yemini's typestate),
 * so a tree costs one visit a way, however many paths it has. {@link rungbook.rules.flow.FactTable} numbers the facts
 * that a tree's tasks speak of, {@link rungbook.rules.flow.PathFacts} answers which of them may and which must hold at
 * a step, and a path that shows an answer is found only when somebody asks for it.
 */
package rungbook.rules.flow;
