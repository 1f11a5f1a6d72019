package limberboard.letters.mail;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.List;
import java.util.Locale;

/** Turns bytes into text by the charset that a letter names, or by one that fits. */
final class TextBytes {
  /** What letters without a charset, or with a wrong one, are mostly written in. */
  private static final Charset WESTERN = Charset.forName("windows-1252");

  /** What many programs call all they write, other letters in it or not. */
  private static final String ASCII = "us-ascii";

  private TextBytes() {}

  /**
   * The text.
   *
   * @param named the charset named, or empty
   * @param remarks where to say that another one was taken
   */
  static String decoded(byte[] bytes, String named, List<String> remarks) {
    Charset said = known(named);
    if (said != null) {
      try {
        return strictly(bytes, said);
      } catch (CharacterCodingException e) {
        remarks.add(
            "The text is not in the charset it names ("
                + named
                + "); it is read as "
                + fits(bytes)
                + ".");
      }
    } else if (!named.isEmpty() && !named.equalsIgnoreCase(ASCII)) {
      remarks.add(
          "The charset "
              + HeadReader.oneLine(named)
              + " is not known; the text is read as "
              + fits(bytes)
              + ".");
    }
    return new String(bytes, fits(bytes));
  }

  /** The charset by its name; null where nobody knows it. */
  private static Charset known(String named) {
    try {
      if (named.isEmpty() || named.equalsIgnoreCase(ASCII)) {
        return null;
      }
      String name = named.toLowerCase(Locale.ROOT);
      // as browsers do (WHATWG Encoding Standard): ISO 8859-1 in letters is windows-1252
      return name.equals("iso-8859-1") || name.equals("latin1") ? WESTERN : Charset.forName(name);
    } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
      return null;
    }
  }

  private static Charset fits(byte[] bytes) {
    try {
      strictly(bytes, StandardCharsets.UTF_8);
      return StandardCharsets.UTF_8;
    } catch (CharacterCodingException e) {
      return WESTERN;
    }
  }

  private static String strictly(byte[] bytes, Charset charset) throws CharacterCodingException {
    return charset
        .newDecoder()
        .onMalformedInput(CodingErrorAction.REPORT)
        .onUnmappableCharacter(CodingErrorAction.REPORT)
        .decode(ByteBuffer.wrap(bytes))
        .toString();
  }
}
