package limberboard.desktop.letters;

import java.awt.BorderLayout;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.RaisedColumn;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;

/** What is said while there are no letters: what this place is for, and how one comes in. */
final class NoLettersPanel extends JPanel {
  private final JButton paste;
  private final JButton open;

  NoLettersPanel(String place, Runnable files, Runnable pasted) {
    super(new BorderLayout());
    setOpaque(false);
    setBorder(BorderFactory.createEmptyBorder(14, 14, 14, 14));
    paste = Buttons.main("Paste a letter", "no-letters-paste", pasted);
    open = Buttons.plain("Open file …", "no-letters-open", files);
    RaisedColumn sheet = RaisedColumn.readable(10);
    sheet.add(Text.title("No letters yet"));
    sheet.add(
        Text.reading(
            "Here owners' letters are read and answered: which boat, what is wrong, what they have"
                + " found out already, and a draft of the answer that you edit and send."));
    sheet.add(
        Text.reading(
            "Copy a letter in your mail program and paste it here. Or save it there as a file"
                + " (.eml) and drop that on this window, open it, or put it into the folder "
                + place
                + "."));
    sheet.add(Row.wrapping(8, paste, open));
    sheet.add(Text.quiet("Nothing is sent anywhere. Letters stay in your folder."));
    add(sheet.scrolling(), BorderLayout.CENTER);
  }

  JComponent first() {
    return paste;
  }

  List<JComponent> regions() {
    return List.of(paste, open);
  }
}
