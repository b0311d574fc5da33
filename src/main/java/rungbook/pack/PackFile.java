package rungbook.pack;

import java.nio.charset.StandardCharsets;

/**
 * A file to be written, by its name in its folder.
 *
 * @param bytes its content; do not modify
 */
public record PackFile(String name, byte[] bytes) {

  static PackFile text(String name, String text) {
    return new PackFile(name, text.getBytes(StandardCharsets.UTF_8));
  }
}
