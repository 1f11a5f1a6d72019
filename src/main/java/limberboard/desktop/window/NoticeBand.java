package limberboard.desktop.window;

import java.awt.Graphics;
import javax.swing.JButton;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Notices.Notice;
import limberboard.desktop.look.Palette;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;

/** A message across the window, until it is put away. */
final class NoticeBand extends Column {
  private final Wrapped text = Text.plain("");
  private final transient Notices notices;

  NoticeBand(Notices notices) {
    super(0);
    this.notices = notices;
    padded(8, 14, 8, 10);
    JButton away = Buttons.plain("Put away", notices::dismiss);
    add(Row.growing(12, 0, text, away));
    getAccessibleContext().setAccessibleName("Message");
    setVisible(false);
    notices.onChange(this::refresh);
  }

  private void refresh() {
    text.setText(notices.current().map(NoticeBand::worded).orElse(""));
    setVisible(notices.current().isPresent());
    revalidate();
    repaint();
  }

  private static String worded(Notice notice) {
    return (notice.failure() ? "Something went wrong. " : "") + notice.text();
  }

  @Override
  protected void paintComponent(Graphics g) {
    g.setColor(Palette.CHOSEN.color());
    g.fillRect(0, 0, getWidth(), getHeight());
    super.paintComponent(g);
  }
}
