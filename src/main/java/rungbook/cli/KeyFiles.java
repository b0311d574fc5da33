package rungbook.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import rungbook.pack.signature.PublicSigningKey;
import rungbook.pack.signature.SigningKey;
import rungbook.pack.signature.UnusableKeyException;

/** Reads the company's key from the files that a command line names. */
final class KeyFiles {

  private KeyFiles() {}

  /** @throws UsageError if the file does not hold a whole key */
  static SigningKey signing(String written, Console terminal) throws IOException {
    try {
      return SigningKey.of(text(written, terminal));
    } catch (UnusableKeyException unusable) {
      throw unusable(written, unusable);
    }
  }

  /** @throws UsageError if the file has no public key */
  static PublicSigningKey checking(String written, Console terminal) throws IOException {
    try {
      return PublicSigningKey.of(text(written, terminal));
    } catch (UnusableKeyException unusable) {
      throw unusable(written, unusable);
    }
  }

  private static String text(String written, Console terminal) throws IOException {
    Path file = InputFiles.path(written, terminal);
    if (!Files.isRegularFile(file)) {
      throw new UsageError("`" + written + "` is not a file", "name a key file");
    }
    try (InputStream in = Files.newInputStream(file)) {
      return new String(in.readNBytes(SigningKey.MOST_FILE_BYTES), StandardCharsets.ISO_8859_1);
    }
  }

  private static UsageError unusable(String written, UnusableKeyException why) {
    return new UsageError("`" + written + "` cannot be used as a key: " + why.getMessage(), why.hint());
  }
}
