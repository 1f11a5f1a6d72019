package limberboard.print.picture;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * The colours of the library's drawings on a dark ground. Lines and letters become light, what was
 * filled white becomes the ground, and the accents become lighter; each keeps its meaning:
 *
 * <table>
 *   <caption>Colours and what they become</caption>
 *   <tr><th>colour</th><th>used for</th><th>becomes</th></tr>
 *   <tr><td>#16324f</td><td>lines and letters (ink)</td><td>#dce7f0</td></tr>
 *   <tr><td>#5b7389</td><td>thin lines</td><td>#9db2c4</td></tr>
 *   <tr><td>#ffffff</td><td>surfaces</td><td>#1b2a38</td></tr>
 *   <tr><td>#eef3f5</td><td>shaded surfaces</td><td>#24374a</td></tr>
 *   <tr><td>#dfeaf0</td><td>water</td><td>#1d3d52</td></tr>
 *   <tr><td>#1f7a6d</td><td>what is meant (accent)</td><td>#5cc2b1</td></tr>
 *   <tr><td>#c9b28a</td><td>wood</td><td>#8f7b56</td></tr>
 *   <tr><td>#c2571a</td><td>danger</td><td>#f0915a</td></tr>
 * </table>
 */
final class DarkColours {
  private static final Map<String, String> TABLE =
      Map.ofEntries(
          Map.entry("#16324f", "#dce7f0"),
          Map.entry("#5b7389", "#9db2c4"),
          Map.entry("#ffffff", "#1b2a38"),
          Map.entry("#fff", "#1b2a38"),
          Map.entry("#eef3f5", "#24374a"),
          Map.entry("#dfeaf0", "#1d3d52"),
          Map.entry("#1f7a6d", "#5cc2b1"),
          Map.entry("#c9b28a", "#8f7b56"),
          Map.entry("#c2571a", "#f0915a"));

  private static final Pattern COLOUR =
      Pattern.compile("#(?:[0-9a-fA-F]{6}|[0-9a-fA-F]{3})(?![0-9a-zA-Z_-])");

  private DarkColours() {}

  /** The drawing with every colour of the table replaced; other colours stay. */
  static String of(String svg) {
    return COLOUR
        .matcher(svg)
        .replaceAll(
            found -> TABLE.getOrDefault(found.group().toLowerCase(Locale.ROOT), found.group()));
  }
}
