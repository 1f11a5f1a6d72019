package limberboard.desktop.letters;

import java.util.function.Function;
import javax.swing.JButton;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;

/** Text that is out of sight until it is asked for. */
final class FoldedText extends Column {
  /** So many characters are shown at once; more would hold the window up. */
  static final int MOST = 20_000;

  private static final int INDENT = 14;
  private final String what;
  private final String text;
  private final JButton button;
  private final Column inside = new Column(6);

  /**
   * A folded text.
   *
   * @param what what it is, to go on after "Show": "the signature"
   * @param name the button's name
   */
  FoldedText(String what, String text, String name) {
    super(4);
    this.what = what;
    this.text = text;
    this.button = Buttons.link("", this::turn);
    button.setName(name);
    button.setHorizontalAlignment(javax.swing.SwingConstants.LEADING);
    inside.padded(0, INDENT, 0, 0);
    inside.setVisible(false);
    add(button);
    add(inside);
    title();
  }

  /**
   * A text as it is read: all of it, or its beginning with the rest folded.
   *
   * @param area makes the area for its beginning
   * @param what what it is, to go on after "the rest of"
   */
  static Column of(String text, Function<String, LetterArea> area, String what) {
    Column column = new Column(6);
    String first = text.length() <= MOST ? text : text.substring(0, MOST);
    column.add(area.apply(first));
    if (text.length() > MOST) {
      column.add(new FoldedText("the rest of " + what, text.substring(MOST), "letter-rest"));
    }
    return column;
  }

  private void title() {
    button.setText((inside.isVisible() ? "Hide " : "Show ") + what + " (" + length() + ")");
  }

  private String length() {
    long lines = text.lines().count();
    return lines == 1 ? "1 line" : lines + " lines";
  }

  private void turn() {
    if (inside.getComponentCount() == 0) {
      inside.add(of(text, shown -> LetterArea.read(shown, what), what));
    }
    inside.setVisible(!inside.isVisible());
    title();
    revalidate();
  }
}
