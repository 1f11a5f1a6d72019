package limberboard.desktop.write.symptom;

import java.awt.BorderLayout;
import java.awt.Insets;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import limberboard.desktop.look.Palette;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.words.CountWords;
import limberboard.writing.start.SymptomOutline;

/** Causes and checks typed as plain lines, of which the first table is made. */
final class OutlineView extends JPanel {
  private static final int LEAST = 620;
  private static final String HOW =
      "Write a line Causes and below it one cause a line, then a line Checks and below it one"
          + " question a line. That is enough; the table asks for the rest.";
  private static final String MORE =
      "More can stand there at once. Behind a cause, in brackets, how common it is and the page"
          + " that mends it: (6, replace-seal). Behind a question how long it takes: (2 minutes),"
          + " and its answers: salt, fresh. Below a question, further in, a line how: and its"
          + " answers with what they tell: salt: seal usually, rain never.";
  private final transient SymptomModel model;
  private final JTextArea lines = new JTextArea();
  private final Wrapped count = Text.strong("");
  private final Wrapped wrong = Text.plain("");
  private final JButton make;
  private boolean showing;

  OutlineView(SymptomModel model, Divider.Memory dividers) {
    super(new BorderLayout(0, 8));
    this.model = model;
    setOpaque(false);
    lines.setName("outline");
    lines.setLineWrap(true);
    lines.setWrapStyleWord(true);
    lines.setTabSize(2);
    lines.getAccessibleContext().setAccessibleName("Causes and checks, one a line");
    lines.putClientProperty("FlatLaf.styleClass", "large");
    When.typed(lines, this::typed);
    make =
        Buttons.main(
            "Make the table (" + Keys.spoken("control ENTER") + ")", "outline-make", this::make);
    JButton empty = Buttons.plain("Begin with an empty table", "outline-empty", model::wantTable);
    Keys.focused(lines, "control ENTER", this::make);
    count.setName("outline-count");
    wrong.setName("outline-wrong");
    Column said = new Column(8).padded(4, 12, 8, 8);
    said.add(Text.heading("From an outline"));
    said.add(Text.plain(HOW));
    said.add(count);
    said.add(wrong);
    said.add(Row.wrapping(8, make, empty));
    said.add(Text.quiet(MORE));
    lines.setMargin(new Insets(10, 12, 10, 12));
    JScrollPane typing = new JScrollPane(lines);
    typing.setBorder(BorderFactory.createLineBorder(Palette.LINE.color()));
    Sides sides =
        new Sides(
            LEAST,
            "Lines",
            typing,
            "What becomes of them",
            said.scrolling(),
            "outline",
            0.55,
            dividers);
    add(sides, BorderLayout.CENTER);
  }

  private void typed() {
    if (!showing) {
      model.outline(lines.getText());
    }
  }

  private void make() {
    model.makeTable();
  }

  void refresh() {
    String now = model.outlined().lines();
    if (!now.equals(lines.getText().strip())) {
      showing = true;
      lines.setText(now);
      showing = false;
    }
    SymptomOutline outline = model.outlined().outline();
    count.setText(
        CountWords.of(outline.causes().size(), "cause")
            + " and "
            + CountWords.of(outline.checks().size(), "check")
            + " so far.");
    make.setEnabled(!outline.causes().isEmpty());
    wrong.setText(
        now.isBlank()
            ? ""
            : outline.problems().stream()
                .filter(each -> each.line() > 0)
                .map(
                    each -> "Line " + each.line() + ": " + each.wrong() + "; " + each.right() + ".")
                .collect(Collectors.joining("\n")));
    wrong.setVisible(!wrong.getText().isEmpty());
  }

  JComponent first() {
    return lines;
  }
}
