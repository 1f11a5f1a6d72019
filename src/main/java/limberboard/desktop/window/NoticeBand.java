package limberboard.desktop.window;

import java.awt.Component;
import java.awt.Graphics;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JButton;
import javax.swing.JLabel;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Notices.Notice;
import limberboard.desktop.base.Notices.Offer;
import limberboard.desktop.look.LineIcon;
import limberboard.desktop.look.Palette;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;

/** A message across the window, until it is put away. */
final class NoticeBand extends Column {
  private static final int GAP = 8;
  private static final int EDGE = 5;
  private final Wrapped text = Text.plain("");
  private final JLabel mark = new JLabel(LineIcon.caution(20));
  private final JButton away;
  private boolean failure;

  NoticeBand(Notices notices) {
    super(0);
    padded(8, 14, 8, 10);
    away = Buttons.plain("Put away", "put-away", notices::dismiss);
    mark.putClientProperty("FlatLaf.style", "foreground: $Limberboard.cautionInk");
    getAccessibleContext().setAccessibleName("Message");
    setVisible(false);
    notices.onChange(() -> refresh(notices.current()));
  }

  private void refresh(Optional<Notice> notice) {
    removeAll();
    failure = notice.map(Notice::failure).orElse(false);
    String words = notice.map(Notice::text).orElse("");
    text.setText(words);
    text.inColour(failure ? Palette.CAUTION_INK : Palette.INK);
    mark.setVisible(failure);
    getAccessibleContext().setAccessibleName(failure ? "Something went wrong" : "Message");
    getAccessibleContext().setAccessibleDescription(words);
    List<Component> row = new ArrayList<>(List.of(mark, text));
    notice.map(Notice::offers).orElse(List.of()).forEach(offer -> row.add(button(offer)));
    row.add(away);
    add(Row.growing(GAP, 1, row.toArray(Component[]::new)));
    setVisible(notice.isPresent());
    revalidate();
    repaint();
  }

  /** Screen readers read an alert when its description changes. */
  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext =
          new AccessibleJPanel() {
            @Override
            public AccessibleRole getAccessibleRole() {
              return AccessibleRole.ALERT;
            }
          };
    }
    return accessibleContext;
  }

  private static JButton button(Offer offer) {
    JButton button = Buttons.plain(offer.title(), offer.action());
    button.setName("notice-" + offer.title());
    return button;
  }

  @Override
  protected void paintComponent(Graphics g) {
    g.setColor((failure ? Palette.CAUTION_PAPER : Palette.CHOSEN).color());
    g.fillRect(0, 0, getWidth(), getHeight());
    if (failure) {
      g.setColor(Palette.CAUTION.color());
      g.fillRect(0, 0, EDGE, getHeight());
    }
    super.paintComponent(g);
  }
}
