package limberboard.print.picture;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Optional;

/** Drawings that stand in the page itself, as addresses by RFC 2397. */
public final class DrawnInPage {
  private static final String SVG = "data:image/svg+xml;base64,";

  private DrawnInPage() {}

  /** The address of a drawing. */
  public static String source(String svg) {
    return SVG + Base64.getEncoder().encodeToString(svg.getBytes(StandardCharsets.UTF_8));
  }

  /** Whether an address is that of a drawing in the page. */
  static boolean is(String source) {
    return source.startsWith(SVG);
  }

  /** The drawing; empty when the address cannot be read. */
  static Optional<String> svg(String source) {
    try {
      byte[] bytes = Base64.getDecoder().decode(source.substring(SVG.length()));
      return Optional.of(new String(bytes, StandardCharsets.UTF_8));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }
}
