/**
 * A control system as a network: nodes, branches and transformer cores, the sampled value of every quantity, and the
 * changes that faults and technicians make. {@link rungbook.circuit.network.NetworkBuilder} turns parts into branches.
 */
package rungbook.circuit.network;
