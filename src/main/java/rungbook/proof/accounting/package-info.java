/**
 * What the readings at one check say: how they split among the ways on with the meter error, how they spread, and the
 * risks of each limit in the sense of JCGM 106.
 */
package rungbook.proof.accounting;
