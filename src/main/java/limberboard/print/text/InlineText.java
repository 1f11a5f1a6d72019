package limberboard.print.text;

import java.util.List;
import limberboard.print.markdown.InlineReader;
import limberboard.print.page.Inline;

/** Runs of text without any marks; a picture is its description. */
public final class InlineText {
  private InlineText() {}

  public static String of(List<Inline> runs) {
    StringBuilder text = new StringBuilder();
    runs.forEach(run -> append(run, text));
    return text.toString();
  }

  private static void append(Inline run, StringBuilder text) {
    if (run instanceof Inline.Text plain) {
      text.append(plain.text());
    } else if (run instanceof Inline.Code code) {
      text.append(code.text());
    } else if (run instanceof Inline.Emphasis emphasis) {
      text.append(of(emphasis.parts()));
    } else if (run instanceof Inline.Strong strong) {
      text.append(of(strong.parts()));
    } else if (run instanceof Inline.PageLink link) {
      text.append(of(link.parts()));
    } else if (run instanceof Inline.Picture picture) {
      text.append(InlineReader.notShown(picture.alt()));
    } else if (run instanceof Inline.LineBreak) {
      text.append('\n');
    }
  }
}
