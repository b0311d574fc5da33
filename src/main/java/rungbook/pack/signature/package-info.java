/**
 * Signatures of packs: who made one. A signature is a file of its own beside the pack, the 64 bytes of Ed25519 (RFC
 * 8032) over the pack's bytes, so that any program with Ed25519 can check it.
 */
package rungbook.pack.signature;
