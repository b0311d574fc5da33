package rungbook.pack.signature;

import java.security.PublicKey;
import rungbook.pack.page.Digest;
import rungbook.text.Sha256;

/** The public half of a company's key: it checks signatures, and anybody may have it. */
public record PublicSigningKey(PublicKey key) {

  /**
   * @param text the content of a key file
   * @throws UnusableKeyException if it has no public Ed25519 key
   */
  public static PublicSigningKey of(String text) throws UnusableKeyException {
    byte[] encoded = KeyText.block(KeyText.PUBLIC, text).orElseThrow(() -> new UnusableKeyException(
        "there is no public key in it", "name the `.pub` file that `rungbook key` wrote"));
    return new PublicSigningKey(Ed25519.publicKey(encoded).orElseThrow(() -> new UnusableKeyException(
        "its public key is of another kind than Ed25519", "name the `.pub` file that `rungbook key` wrote")));
  }

  /** Whether the owner of the key signed exactly this file. */
  public boolean verifies(byte[] file, byte[] signature) {
    return Ed25519.verifies(key, file, signature);
  }

  /** The start of the SHA-256 of the encoded key, in groups, as people compare it. */
  public String fingerprint() {
    return Digest.grouped(Sha256.hex(key.getEncoded()));
  }

  /** The text of its file. */
  public String written() {
    return KeyText.written(KeyText.PUBLIC, key.getEncoded());
  }
}
