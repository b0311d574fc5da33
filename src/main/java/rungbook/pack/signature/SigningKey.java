package rungbook.pack.signature;

import java.nio.charset.StandardCharsets;
import java.security.KeyPair;
import java.security.PrivateKey;
import java.util.List;
import java.util.stream.Stream;
import rungbook.pack.PackFile;
import rungbook.pack.page.FileNames;

/** A company's whole key: who has it can sign packs in the company's name. */
public final class SigningKey {

  /** What a signature's file adds to the name of the file it signs. */
  public static final String ENDING = ".sig";

  /** A key file has a few hundred; what follows is not read. */
  public static final int MOST_FILE_BYTES = 10_000;

  private static final byte[] PROBE = "whether both halves belong together".getBytes(StandardCharsets.US_ASCII);

  private final PrivateKey key;
  private final PublicSigningKey publicKey;

  private SigningKey(PrivateKey key, PublicSigningKey publicKey) {
    this.key = key;
    this.publicKey = publicKey;
  }

  public static SigningKey random() {
    KeyPair keys = Ed25519.newKeys();
    return new SigningKey(keys.getPrivate(), new PublicSigningKey(keys.getPublic()));
  }

  /**
   * @param text the content of a key file: both halves
   * @throws UnusableKeyException if one is missing, of another kind, locked with a password, or of another key
   */
  public static SigningKey of(String text) throws UnusableKeyException {
    SigningKey read = new SigningKey(privateKey(text), PublicSigningKey.of(text));
    if (!read.publicKey.verifies(PROBE, read.sign(PROBE))) {
      throw new UnusableKeyException("its public and its private key do not belong together",
          "use the `.key` file as `rungbook key` wrote it");
    }
    return read;
  }

  private static PrivateKey privateKey(String text) throws UnusableKeyException {
    if (KeyText.block(KeyText.ENCRYPTED, text).isPresent()) {
      throw new UnusableKeyException("its private key has a password", "name a file with the key in the clear");
    }
    byte[] encoded = KeyText.block(KeyText.PRIVATE, text).orElseThrow(() -> new UnusableKeyException(
        "there is no private key in it", "name the `.key` file that `rungbook key` wrote"));
    return Ed25519.privateKey(encoded).orElseThrow(() -> new UnusableKeyException(
        "its private key is of another kind than Ed25519", "make one with `rungbook key`"));
  }

  public PublicSigningKey publicKey() {
    return publicKey;
  }

  /** @return 64 bytes, the same ones for the same file */
  public byte[] sign(byte[] file) {
    return Ed25519.signature(key, file);
  }

  /** Every file, and behind each page its signature as a file to lie beside it. */
  public List<PackFile> signed(List<PackFile> files) {
    return files.stream().flatMap(file -> file.name().endsWith(FileNames.ENDING)
        ? Stream.of(file, signature(file)) : Stream.of(file)).toList();
  }

  /** The signature of a file, as a file to lie beside it. */
  public PackFile signature(PackFile file) {
    return new PackFile(file.name() + ENDING, sign(file.bytes()));
  }

  /** The text of its file: both halves. */
  public String written() {
    return KeyText.written(KeyText.PRIVATE, key.getEncoded()) + publicKey.written();
  }
}
