package limberboard.desktop.window;

import java.awt.Graphics;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import limberboard.desktop.base.Session;
import limberboard.desktop.look.Palette;
import net.miginfocom.swing.MigLayout;

/** The strip at the top: which boat, one search field over everything, and how things are shown. */
final class TopStrip extends JPanel {
  private final BoatChooser chooser;
  private final JComponent search;
  private final WindowMenu menu;

  TopStrip(Session session, Runnable notEntered, JComponent search, WindowMenu menu) {
    super(new MigLayout("insets 9 14 9 14, fillx", "[][215lp:250lp:320lp]24[grow,fill]24[]", "[]"));
    this.chooser = new BoatChooser(session, notEntered);
    this.search = search;
    this.menu = menu;
    JLabel boat = new JLabel("Boat");
    boat.setDisplayedMnemonic('o');
    boat.setLabelFor(chooser);
    add(boat);
    add(chooser, "growx, wmin 200lp, shrinkprio 50");
    add(search, "wmin 120lp, wmax 760lp, growx");
    add(menu.button());
    setOpaque(true);
  }

  /** Marks the boat of this id, if any, as one whose form has changes that are not saved. */
  void unsaved(Optional<String> id) {
    chooser.unsaved(id);
  }

  /** The controls of the strip, for going from region to region. */
  List<JComponent> regions() {
    return List.of(search, chooser, menu.button());
  }

  @Override
  protected void paintComponent(Graphics g) {
    super.paintComponent(g);
    g.setColor(Palette.LINE.color());
    g.fillRect(0, getHeight() - 1, getWidth(), 1);
  }
}
