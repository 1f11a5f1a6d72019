package limberboard.print.text;

import java.util.List;
import limberboard.print.markdown.InlineReader;
import limberboard.print.page.Inline;
import limberboard.print.page.InlineWriter;

/** Runs of text without any marks; a picture is its description. */
public final class InlineText implements InlineWriter {
  private final StringBuilder text = new StringBuilder();

  private InlineText() {}

  /** What the runs say. */
  public static String of(List<Inline> runs) {
    InlineText all = new InlineText();
    all.all(runs);
    return all.text.toString();
  }

  private void all(List<Inline> runs) {
    runs.forEach(run -> run.to(this));
  }

  @Override
  public void text(Inline.Text plain) {
    text.append(plain.text());
  }

  @Override
  public void code(Inline.Code code) {
    text.append(code.text());
  }

  @Override
  public void emphasis(Inline.Emphasis emphasis) {
    all(emphasis.parts());
  }

  @Override
  public void strong(Inline.Strong strong) {
    all(strong.parts());
  }

  @Override
  public void link(Inline.PageLink link) {
    all(link.parts());
  }

  @Override
  public void cautionName(Inline.CautionName name) {
    text.append("[Caution: ").append(name.title()).append("] ");
  }

  @Override
  public void picture(Inline.Picture picture) {
    text.append(InlineReader.notShown(picture.alt()));
  }

  @Override
  public void lineBreak(Inline.LineBreak end) {
    text.append('\n');
  }
}
