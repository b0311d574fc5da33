package rungbook.web.service;

import io.quarkus.runtime.Startup;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import rungbook.pack.PackFile;
import rungbook.pack.signature.PublicSigningKey;
import rungbook.pack.signature.SigningKey;
import rungbook.pack.signature.UnusableKeyException;
import rungbook.store.document.Refused;

/** The key with which this server signs packs, if it has one. It is read once, at the start. */
@Startup
@ApplicationScoped
public class CompanyKey {
  static final String SETTING = "rungbook.signing-key";

  private final Optional<SigningKey> key;

  /** @throws Refused if the file that the setting names cannot be used; the server does not start then */
  CompanyKey(@ConfigProperty(name = SETTING) Optional<String> file) {
    this.key = file.map(CompanyKey::read);
  }

  private static SigningKey read(String file) {
    try (InputStream in = Files.newInputStream(Path.of(file))) {
      return SigningKey.of(new String(in.readNBytes(SigningKey.MOST_FILE_BYTES), StandardCharsets.ISO_8859_1));
    } catch (IOException | InvalidPathException e) {
      throw new Refused("the key file `" + file + "` cannot be read", "correct the setting " + SETTING
          + ", or let the server's user read the file");
    } catch (UnusableKeyException unusable) {
      throw new Refused("`" + file + "` cannot be used as a key: " + unusable.getMessage(), unusable.hint());
    }
  }

  /** The half that checks. */
  public Optional<PublicSigningKey> publicKey() {
    return key.map(SigningKey::publicKey);
  }

  /** The files as they are handed out: with their signatures if the server has a key. */
  public List<PackFile> signed(List<PackFile> files) {
    return key.map(with -> with.signed(files)).orElse(files);
  }

  /** The signature of one file; empty if the server has no key. */
  public Optional<PackFile> signature(PackFile file) {
    return key.map(with -> with.signature(file));
  }
}
