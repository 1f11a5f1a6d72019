package limberboard.desktop.write;

import java.awt.BorderLayout;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;

/** A question that is asked in the place of the text; Escape goes back to it. */
abstract class Sheet extends JPanel {
  private static final int WIDTH = 620;
  private final transient Runnable away;

  /**
   * A sheet.
   *
   * @param away goes back to the text
   */
  Sheet(Runnable away) {
    super(new BorderLayout(0, 10));
    this.away = away;
    setOpaque(false);
    setBorder(BorderFactory.createEmptyBorder(6, 4, 6, 4));
    Keys.within(this, "ESCAPE", away);
  }

  /** An empty column of readable width at the top of the sheet. */
  final Column column() {
    Column column = new Column(10).atMost(WIDTH);
    add(column.scrolling(), BorderLayout.CENTER);
    return column;
  }

  /** Goes back to the text. */
  final void away() {
    away.run();
  }

  /** What is got ready each time that it is shown. */
  void ready() {}

  /** Where it begins. */
  abstract JComponent begin();

  /** Its regions. */
  List<JComponent> regions() {
    return List.of(begin());
  }
}
