package limberboard.moving;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import limberboard.library.file.Controls;

/** The name of an entry, which must be a plain path of something that a workspace holds. */
final class ArchiveName {
  private static final int LONGEST = 240;
  private static final List<String> HELD =
      List.of("articles/", "index/words/", "boats/", "demo-boats/", "drills/");
  private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul");

  private ArchiveName() {}

  /**
   * Reads a name.
   *
   * @param isUtf8 whether the archive says that it is UTF-8; otherwise it must be ASCII
   * @throws ArchiveTrouble when it is not in that encoding
   */
  static String read(byte[] bytes, boolean isUtf8) throws ArchiveTrouble {
    boolean ascii = true;
    for (byte each : bytes) {
      ascii &= each > 0;
    }
    try {
      if (!ascii && !isUtf8) {
        throw new CharacterCodingException();
      }
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      String shown = new String(bytes, StandardCharsets.US_ASCII);
      throw new ArchiveTrouble(
          "a name in it is not UTF-8: " + shown, "make the archive anew with UTF-8 names");
    }
  }

  /** What is wrong with a name, to follow it; empty when it may be written. */
  static Optional<String> wrong(String name) {
    if (name.isEmpty() || name.length() > LONGEST) {
      return Optional.of("is empty or too long");
    }
    if (name.chars().anyMatch(c -> Controls.is((char) c) || c < ' ')) {
      return Optional.of("has control characters");
    }
    if (name.startsWith("/") || name.contains("\\") || name.contains(":")) {
      return Optional.of("leads out of the workspace");
    }
    for (String part : name.split("/", -1)) {
      if (part.equals("..") || part.equals(".") || part.isEmpty()) {
        return Optional.of("leads out of the workspace");
      }
      String small = part.toLowerCase(Locale.ROOT);
      if (part.startsWith(".")
          || part.endsWith(".")
          || part.endsWith(" ")
          || DEVICES.contains(small.replaceFirst("\\..*", ""))
          || small.matches("(com|lpt)[0-9](\\..*)?")) {
        return Optional.of("is hidden, or no name that every system takes");
      }
    }
    return HELD.stream().anyMatch(name::startsWith)
        ? Optional.empty()
        : Optional.of("is nothing that a workspace holds");
  }
}
