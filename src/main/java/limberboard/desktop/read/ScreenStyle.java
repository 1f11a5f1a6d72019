package limberboard.desktop.read;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import limberboard.desktop.look.Palette;

/**
 * What the screen adds to the pages' style sheet: the theme's own colours, the text size, and a
 * column of about 70 characters a line.
 *
 * @param colours the theme's colours, as CSS writes them
 * @param percent text size in per cent of the usual
 * @param column the width of the column, in pixels at the usual text size
 */
public record ScreenStyle(Map<Palette, String> colours, int percent, int column) {
  private static final double BODY = 15.5;
  private static final int COLUMN = 640;
  private static final int SHEET = 940;
  private static final double HUNDRED = 100;
  private static final String RULES =
      "body.light, body.dark { background-color: SHEET; color: INK; font-size: SIZEpx; }"
          + " .page { max-width: WIDTHpx; margin: 0 auto; }"
          + " .footer { display: none; }"
          + " body a, body .kind { color: ACCENT; }"
          + " body .caution { border-color: CAUTION-LINE; background-color: CAUTION-GROUND; }"
          + " body .caution-title .word { color: CAUTION-WORD; }"
          + " body .cut-for, body .facts th, body .part-left-out, body .part-sources"
          + " { color: QUIET; }"
          + " body .ticks th, body .ticks td, body .note { font-size: 0.92em; }"
          + " body .notice { background-color: CHOSEN; border-left-color: ACCENT; }";

  /** Copies the map. */
  public ScreenStyle {
    colours = Map.copyOf(colours);
  }

  /** A style with the column of pages. */
  public ScreenStyle(Map<Palette, String> colours, int percent) {
    this(colours, percent, COLUMN);
  }

  /** The same for sheets, whose tables need a wider column. */
  public ScreenStyle wide() {
    return new ScreenStyle(colours, percent, SHEET);
  }

  /** The style of the theme now in use; for the event thread. */
  public static ScreenStyle now(int percent) {
    Map<Palette, String> colours = new EnumMap<>(Palette.class);
    for (Palette colour : Palette.values()) {
      colours.put(colour, colour.css());
    }
    return new ScreenStyle(colours, percent);
  }

  /** The XHTML with this style at the end of its head. */
  String addTo(String xhtml) {
    int head = xhtml.indexOf("</head>");
    if (head < 0) {
      return xhtml;
    }
    return xhtml.substring(0, head)
        + "<style type=\"text/css\">"
        + css()
        + "</style>"
        + xhtml.substring(head);
  }

  private String css() {
    double scale = percent / HUNDRED;
    return RULES
        .replace("SHEET", colours.get(Palette.SHEET))
        .replace("INK", colours.get(Palette.INK))
        .replace("QUIET", colours.get(Palette.QUIET))
        .replace("ACCENT", colours.get(Palette.ACCENT))
        .replace("CHOSEN", colours.get(Palette.CHOSEN))
        .replace("CAUTION-LINE", colours.get(Palette.CAUTION))
        .replace("CAUTION-GROUND", colours.get(Palette.CAUTION_PAPER))
        .replace("CAUTION-WORD", colours.get(Palette.CAUTION_INK))
        .replace("SIZE", String.format(Locale.ROOT, "%.1f", BODY * scale))
        .replace("WIDTH", Long.toString(Math.round(column * scale)));
  }
}
