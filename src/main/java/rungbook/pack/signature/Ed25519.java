package rungbook.pack.signature;

import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.util.Optional;

/** Java's Ed25519 (RFC 8032) on encoded keys (RFC 8410). */
final class Ed25519 {

  private static final String NAME = "Ed25519";

  /** RFC 8032, section 5.1.6. */
  private static final int SIGNATURE_BYTES = 64;

  private Ed25519() {}

  static KeyPair newKeys() {
    try {
      return KeyPairGenerator.getInstance(NAME).generateKeyPair();
    } catch (GeneralSecurityException e) {
      throw unavailable(e);
    }
  }

  /** Empty if it is another kind of key. */
  static Optional<PrivateKey> privateKey(byte[] encoded) {
    try {
      return Optional.of(KeyFactory.getInstance(NAME).generatePrivate(new PKCS8EncodedKeySpec(encoded)));
    } catch (GeneralSecurityException another) {
      return Optional.empty();
    }
  }

  /** Empty if it is another kind of key. */
  static Optional<PublicKey> publicKey(byte[] encoded) {
    try {
      return Optional.of(KeyFactory.getInstance(NAME).generatePublic(new X509EncodedKeySpec(encoded)));
    } catch (GeneralSecurityException another) {
      return Optional.empty();
    }
  }

  /** @return 64 bytes, the same ones each time */
  static byte[] signature(PrivateKey key, byte[] file) {
    try {
      Signature signing = Signature.getInstance(NAME);
      signing.initSign(key);
      signing.update(file);
      return signing.sign();
    } catch (GeneralSecurityException e) {
      throw unavailable(e);
    }
  }

  /** Java itself does not look at what follows the 64 bytes. */
  static boolean verifies(PublicKey key, byte[] file, byte[] signature) {
    return signature.length == SIGNATURE_BYTES && isOf(key, file, signature);
  }

  private static boolean isOf(PublicKey key, byte[] file, byte[] signature) {
    try {
      Signature checking = Signature.getInstance(NAME);
      checking.initVerify(key);
      checking.update(file);
      return checking.verify(signature);
    } catch (GeneralSecurityException malformed) {
      return false;
    }
  }

  private static IllegalStateException unavailable(GeneralSecurityException e) {
    return new IllegalStateException("every Java from 15 on has Ed25519", e);
  }
}
