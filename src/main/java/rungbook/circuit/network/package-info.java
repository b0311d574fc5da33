/**
 * A control system as a circuit: nodes, branches and transformer cores, the sampled value of every quantity, and what a
 * fault or a technician changes. {@link rungbook.circuit.network.NetworkBuilder} turns parts into branches.
 */
package rungbook.circuit.network;
