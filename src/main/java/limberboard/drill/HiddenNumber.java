package limberboard.drill;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.Optional;
import limberboard.library.page.Course;

/**
 * A number that stands for a cause of a symptom, so that a file can say which cause a drill hides
 * and nobody can read it there. It depends on symptom, cause and seed alone: whatever the boat's
 * age and the recorded cases, it stands for the same cause. Stateless.
 */
public final class HiddenNumber {
  private HiddenNumber() {}

  /**
   * The number of a cause.
   *
   * @return {@value Course#LEAST_HIDDEN} to {@value Course#MOST_HIDDEN}
   */
  public static int of(String symptom, String cause, long seed) {
    int many = Course.MOST_HIDDEN - Course.LEAST_HIDDEN + 1;
    BigInteger digest = new BigInteger(1, digest(seed + " " + symptom + " " + cause));
    return Course.LEAST_HIDDEN + digest.mod(BigInteger.valueOf(many)).intValue();
  }

  /** The cause that a number stands for, if it is one of these. */
  public static Optional<String> cause(
      int number, String symptom, long seed, Collection<String> causes) {
    return causes.stream().filter(cause -> of(symptom, cause, seed) == number).findFirst();
  }

  private static byte[] digest(String text) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
