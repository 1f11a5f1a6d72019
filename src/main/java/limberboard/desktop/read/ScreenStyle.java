package limberboard.desktop.read;

import limberboard.desktop.look.Palette;

/**
 * What the screen adds to the pages' style sheet: the theme's own ground and ink, the text size,
 * and a column of about 70 characters a line.
 *
 * @param ground behind the text, as CSS writes colours
 * @param ink the text
 * @param percent text size in per cent of the usual
 */
public record ScreenStyle(String ground, String ink, int percent) {
  private static final double BODY = 15.5;
  private static final int COLUMN = 640;
  private static final double HUNDRED = 100;

  /** The style of the theme now in use; for the event thread. */
  public static ScreenStyle now(int percent) {
    return new ScreenStyle(Palette.SHEET.css(), Palette.INK.css(), percent);
  }

  /** The XHTML with this style at the end of its head. */
  String addTo(String xhtml) {
    double scale = percent / HUNDRED;
    String css =
        String.format(
            java.util.Locale.ROOT,
            "<style type=\"text/css\">body.light, body.dark { background-color: %s; color: %s;"
                + " font-size: %.1fpx; } .page { max-width: %dpx; margin: 0 auto; }"
                + " .footer { display: none; }</style>",
            ground,
            ink,
            BODY * scale,
            Math.round(COLUMN * scale));
    int head = xhtml.indexOf("</head>");
    return head < 0 ? xhtml : xhtml.substring(0, head) + css + xhtml.substring(head);
  }
}
