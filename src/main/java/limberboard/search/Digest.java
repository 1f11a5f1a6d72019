package limberboard.search;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;

/**
 * SHA-256 (FIPS 180-4) over texts, each preceded by its length so that they cannot run together.
 */
final class Digest {
  private final MessageDigest sha256;

  Digest() {
    try {
      sha256 = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  Digest add(String text) {
    add(text.getBytes(StandardCharsets.UTF_8));
    return this;
  }

  Digest add(byte[] bytes) {
    sha256.update(ByteBuffer.allocate(Integer.BYTES).putInt(bytes.length).array());
    sha256.update(bytes);
    return this;
  }

  Digest add(Collection<String> texts) {
    sha256.update(ByteBuffer.allocate(Integer.BYTES).putInt(texts.size()).array());
    texts.forEach(this::add);
    return this;
  }

  /** The digest; begins anew. */
  byte[] bytes() {
    return sha256.digest();
  }

  /** The digest in hexadecimal; begins anew. */
  String hex() {
    return HexFormat.of().formatHex(bytes());
  }
}
