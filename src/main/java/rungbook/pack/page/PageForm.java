package rungbook.pack.page;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungbook.text.Markup;
import rungbook.text.Sha256;

/**
 * A page's fixed form: the places of its digest, and what its title block says. It is found only in a file that begins
 * exactly as {@link Frame} and {@link TitleBlock} write it. Text of a tree cannot look like any of this: it is escaped.
 *
 * @param page the file, one character a byte
 * @param fullAt where the 64 digits begin
 * @param shortAt where the grouped short form begins
 * @param policy its content security policy
 */
public record PageForm(String page, int fullAt, int shortAt, String policy, String style, Identity identity) {

  /**
   * What a page says it is.
   *
   * @param cells name and words of each cell of its title block
   */
  public record Identity(String file, String title, Map<String, String> cells) {}

  private static final int SHORT_LENGTH = Digest.grouped(Digest.BLANK).length();
  private static final Pattern CELL = Pattern.compile("<div><dt>([^<]*+)</dt><dd>([^<]*+)</dd></div>\n");
  private static final Pattern BEGINNING = Pattern
      .compile(Pattern.quote(Frame.BEFORE_DIGEST) + "(?<full>[0-9a-f]{64})\">\n"
          + Pattern.quote(Frame.BEFORE_POLICY) + "(?<policy>[^\"<>]*+)\">\n" + Pattern.quote(Frame.SETTINGS) + "\n"
          + "<title>[^<]*+</title>\n<style>(?<style>[^<]*+)</style></head>\n<body data-file=\"(?<file>[^\"<>]*+)\">\n"
          + Pattern.quote(TitleBlock.BEFORE_TITLE) + "(?<title>[^<]*+)</h1><p class=\"complaint\">[^<]*+"
          + Pattern.quote(TitleBlock.AFTER_COMPLAINT));

  private static final Pattern TITLE_BLOCK = Pattern.compile(Pattern.quote(TitleBlock.BLOCK)
      + "(?<cells>(?:" + CELL.pattern() + "){0,5})"
      + Pattern.quote(TitleBlock.BEFORE_DIGEST) + "(?<short>[0-9a-f ]{" + SHORT_LENGTH + "})"
      + Pattern.quote(TitleBlock.AFTER_DIGEST));

  /** A tag that marks a digest, however it is spaced and quoted. */
  private static final Pattern DIGEST_TAG = Pattern.compile(
      "(?i)<[a-z][^<>]*?\\s(?:class|name)\\s{0,99}=\\s{0,99}[\"']?[^\"'<>]{0,99}?"
          + "(?<![\\w-])(?:rungbook-)?digest(?![\\w-])");

  private static final Pattern SCRIPT = Pattern.compile("(?i)<script");

  /** Empty for a file that begins in another way. */
  public static Optional<PageForm> of(byte[] file) {
    String page = latin(file);
    Matcher beginning = BEGINNING.matcher(page);
    Matcher block = TITLE_BLOCK.matcher(page);
    return beginning.lookingAt() && block.find(beginning.end())
        ? Optional.of(new PageForm(page, beginning.start("full"), block.start("short"),
            utf8(beginning.group("policy")), utf8(beginning.group("style")), identity(beginning, block.group("cells"))))
        : Optional.empty();
  }

  private static Identity identity(Matcher beginning, String block) {
    Map<String, String> cells = new LinkedHashMap<>();
    CELL.matcher(block).results()
        .forEach(cell -> cells.put(words(cell.group(1)), words(cell.group(2))));
    return new Identity(words(beginning.group("file")), words(beginning.group("title")), cells);
  }

  private static String words(String latin) {
    return Markup.unescape(utf8(latin));
  }

  /** Whether a file claims to be a page of this kind, in whatever form. */
  public static boolean isClaimed(byte[] file) {
    return latin(file).contains("rungbook-digest");
  }

  /** Whether its digest is in the head and in the title block, and nowhere else. */
  public boolean hasOneDigest() {
    return DIGEST_TAG.matcher(page).results().count() == 2;
  }

  /** Whether its style and its only script are those of its policy, and nothing follows the script. */
  public boolean isClosed() {
    int script = page.lastIndexOf(Frame.BEFORE_SCRIPT);
    if (script < 0 || !page.endsWith(Frame.AFTER_SCRIPT) || SCRIPT.matcher(page).results().count() != 1) {
      return false;
    }
    String code = utf8(
        page.substring(script + Frame.BEFORE_SCRIPT.length(), page.length() - Frame.AFTER_SCRIPT.length()));
    String allowed = Frame.policy(style, code);
    return policy.equals(allowed) || policy.equals(allowed + Frame.INDEX_POLICY);
  }

  public String stated() {
    return page.substring(fullAt, fullAt + Digest.BLANK.length());
  }

  public String shown() {
    return page.substring(shortAt, shortAt + SHORT_LENGTH);
  }

  /** The digest of the file, whatever it states. */
  public String computed() {
    return Sha256.hex(with(Digest.BLANK));
  }

  /** The file with a digest in its places. */
  public byte[] with(String digest) {
    return bytes(new StringBuilder(page).replace(fullAt, fullAt + digest.length(), digest)
        .replace(shortAt, shortAt + SHORT_LENGTH, Digest.grouped(digest)).toString());
  }

  /** Byte for byte, so that a file of any bytes can be looked at as text. */
  private static String latin(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  private static byte[] bytes(String latin) {
    return latin.getBytes(StandardCharsets.ISO_8859_1);
  }

  private static String utf8(String latin) {
    return new String(bytes(latin), StandardCharsets.UTF_8);
  }
}
