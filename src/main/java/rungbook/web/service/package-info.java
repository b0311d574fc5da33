/**
 * What pages and the REST interface share: the compiled library, proofs, packs, maps and imports, each made once per
 * change.
 */
package rungbook.web.service;
