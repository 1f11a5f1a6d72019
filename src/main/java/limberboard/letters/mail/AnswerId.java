package limberboard.letters.mail;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The message ids of the answers that this program drafts. Each is another one (RFC 5322, section
 * 3.6.4), and each says which letter it answers, so that a letter that names nothing but our answer
 * finds its conversation even where the answer was not kept. Stateless.
 */
public final class AnswerId {
  private static final int KEY_BYTES = 12;
  private static final Pattern OURS =
      Pattern.compile("<answer\\.([0-9a-f]{24})\\.[0-9a-f-]{36}@limberboard\\.invalid>");
  private static final Pattern BARE =
      Pattern.compile("<answer\\.[0-9a-f-]{36}@limberboard\\.invalid>");

  private AnswerId() {}

  /**
   * A new id for an answer.
   *
   * @param letter the head of the letter that is answered
   * @param unique makes it another one each time
   */
  public static String of(LetterHead letter, UUID unique) {
    String key = letter.id().map(id -> key(id) + ".").orElse("");
    return "<answer." + key + unique + "@limberboard.invalid>";
  }

  /** Whether an id is one of these. */
  public static boolean isOurs(String id) {
    return OURS.matcher(id).matches() || BARE.matcher(id).matches();
  }

  /** What the {@link #key} of the letter is that the answer with this id answers. */
  public static Optional<String> answered(String id) {
    Matcher ours = OURS.matcher(id);
    return ours.matches() ? Optional.of(ours.group(1)) : Optional.empty();
  }

  /** What stands for a letter's id in the ids of its answers: part of its SHA-256 sum. */
  public static String key(String id) {
    try {
      byte[] sum = MessageDigest.getInstance("SHA-256").digest(id.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(sum, 0, KEY_BYTES);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("each Java platform has SHA-256", e);
    }
  }
}
