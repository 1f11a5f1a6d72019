package limberboard.desktop.window;

import java.awt.Component;
import java.awt.Graphics;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Notices.Notice;
import limberboard.desktop.base.Notices.Offer;
import limberboard.desktop.look.Palette;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;

/** A message across the window, until it is put away. */
final class NoticeBand extends Column {
  private static final int GAP = 8;
  private final Wrapped text = Text.plain("");
  private final JButton away;

  NoticeBand(Notices notices) {
    super(0);
    padded(8, 14, 8, 10);
    away = Buttons.plain("Put away", notices::dismiss);
    away.setName("put-away");
    getAccessibleContext().setAccessibleName("Message");
    setVisible(false);
    notices.onChange(() -> refresh(notices.current()));
  }

  private void refresh(Optional<Notice> notice) {
    removeAll();
    text.setText(notice.map(NoticeBand::worded).orElse(""));
    List<Component> row = new ArrayList<>(List.of(text));
    notice.map(Notice::offers).orElse(List.of()).forEach(offer -> row.add(button(offer)));
    row.add(away);
    add(Row.growing(GAP, 0, row.toArray(Component[]::new)));
    setVisible(notice.isPresent());
    revalidate();
    repaint();
  }

  private static JButton button(Offer offer) {
    JButton button = Buttons.plain(offer.title(), offer.action());
    button.setName("notice-" + offer.title());
    return button;
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
