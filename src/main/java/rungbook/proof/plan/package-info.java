/**
 * What has to be known before anything is followed: the order of the steps, the equipment states that a tree can meet,
 * the readings to ask the circuit for, and which findings each way on can reach.
 */
package rungbook.proof.plan;
