package limberboard.desktop.drills;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Rectangle;
import java.awt.event.MouseWheelListener;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import javax.swing.ScrollPaneConstants;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.WordTable;
import limberboard.desktop.parts.Wrapped;
import limberboard.drill.learn.ClassResults;
import limberboard.drill.learn.DrillRecord;
import limberboard.drill.learn.Progress;
import limberboard.drill.mark.Certainty;
import limberboard.words.CountWords;

/** The results of a class: who loses minutes at what, as a picture and as a table. */
final class ClassView implements View {
  private static final String WAITING = "waiting";
  private static final String SHOWN = "shown";
  private final ClassModel model;
  private final CardLayout cards = new CardLayout();
  private final JPanel main = new JPanel(cards);
  private final JPanel panel = new JPanel(new BorderLayout(0, 8));
  private final Wrapped words = Text.reading("");
  private final Wrapped refused = Text.plain("");
  private final Column refusedBox = new Column(4);
  private final ClassPicture picture = new ClassPicture();
  private final JScrollPane scroller =
      new JScrollPane(
          picture,
          ScrollPaneConstants.VERTICAL_SCROLLBAR_NEVER,
          ScrollPaneConstants.HORIZONTAL_SCROLLBAR_AS_NEEDED);
  private final WordTable table =
      new WordTable(
          "class-table",
          "Students with what they lost",
          List.of("Student", "Drills", "Lost", "Dangers", "Brier", "Most at"),
          List.of(16, 8, 10, 10, 9, 47));
  private final JToggleButton bySymptom = new JToggleButton("By symptom");
  private final JToggleButton byMistake = new JToggleButton("By kind of mistake");
  private final JButton gather;
  private final DrillWaiting waiting;
  private final Column both = new Column(4);

  /**
   * The view.
   *
   * @param model the class
   * @param ask asks for the folder of results and gathers it
   */
  ClassView(ClassModel model, Runnable ask) {
    this.model = model;
    gather = Buttons.main("Gather results \u2026", "class-gather", ask);
    gather.setToolTipText("The folder with the files that students have saved");
    waiting =
        new DrillWaiting(
            "The results are being marked",
            "class-stop",
            model::isGathering,
            () -> CountWords.of(model.soFar(), "result") + " marked so far.",
            model::stop,
            ask);
    ButtonGroup group = new ButtonGroup();
    choice(bySymptom, "class-by-symptom", group, false);
    choice(byMistake, "class-by-mistake", group, true);
    scroller.setBorder(BorderFactory.createEmptyBorder());
    scroller.setOpaque(false);
    scroller.getViewport().setOpaque(false);
    for (MouseWheelListener wheel : scroller.getMouseWheelListeners()) {
      scroller.removeMouseWheelListener(wheel);
    }
    Keys.focused(picture, "RIGHT", () -> aside(1));
    Keys.focused(picture, "LEFT", () -> aside(-1));
    both.add(scroller);
    Column gap = new Column(0).padded(12, 0, 4, 0);
    gap.add(Text.heading("Students"));
    both.add(gap);
    both.add(table.getTableHeader());
    both.add(table);
    Keys.within(panel, "PAGE_DOWN", () -> scroll(1));
    Keys.within(panel, "PAGE_UP", () -> scroll(-1));
    main.setOpaque(false);
    main.add(both.scrolling(), SHOWN);
    main.add(waiting, WAITING);
    main.add(new Column(0), "empty");
    Column above = new Column(6);
    above.add(words);
    above.add(Row.wrapping(8, gather, bySymptom, byMistake));
    refusedBox.add(
        Text.caution("Could not be marked; the others are gathered, no file is changed"));
    refusedBox.add(refused);
    above.add(refusedBox);
    panel.setOpaque(false);
    panel.add(above, BorderLayout.NORTH);
    panel.add(main, BorderLayout.CENTER);
    model.onChange(this::refresh);
    refresh();
  }

  private void scroll(int by) {
    Rectangle seen = both.getVisibleRect();
    seen.y = Math.max(0, seen.y + by * Math.max(1, seen.height / 2));
    both.scrollRectToVisible(seen);
  }

  private void aside(int by) {
    Rectangle seen = picture.getVisibleRect();
    seen.x = Math.max(0, seen.x + by * Math.max(1, seen.width / 2));
    picture.scrollRectToVisible(seen);
  }

  private void choice(JToggleButton button, String name, ButtonGroup group, boolean mistake) {
    button.setName(name);
    button.addActionListener(e -> model.byMistake(mistake));
    Keys.focused(button, "ENTER", button::doClick);
    group.add(button);
  }

  private void refresh() {
    (model.isByMistake() ? byMistake : bySymptom).setSelected(true);
    boolean there = model.gathered().isPresent();
    bySymptom.setVisible(there);
    byMistake.setVisible(there);
    waiting.refresh();
    cards.show(main, model.isGathering() ? WAITING : there ? SHOWN : "empty");
    words.setText(model.gathered().map(ClassView::words).orElse(EMPTY));
    List<String> wrong = model.gathered().map(ClassModel.Gathered::refused).orElse(List.of());
    refused.setText(String.join("\n", wrong));
    refusedBox.setVisible(!wrong.isEmpty());
    model.gathered().map(ClassModel.Gathered::results).ifPresent(this::show);
    panel.revalidate();
    panel.repaint();
  }

  private static final String EMPTY =
      "Students save what they played as results and hand the files in. Put them into one folder"
          + " and gather it here: who loses how many minutes, at what, luck apart.";

  private static String words(ClassModel.Gathered gathered) {
    ClassResults results = gathered.results();
    List<String> lines = new ArrayList<>();
    lines.add(
        "Minutes lost against the best plan, luck apart: "
            + CountWords.of(results.students().size(), "student")
            + ", "
            + CountWords.of(results.all().drills().size(), "drill")
            + ".");
    if (!results.sharedNames().isEmpty()) {
      lines.add(
          "Several students are called "
              + String.join(", ", results.sharedNames())
              + "; their keys stand behind the name.");
    }
    if (results.twice() > 0) {
      lines.add("Handed in more than once, and counted once: " + results.twice() + ".");
    }
    return String.join("\n", lines);
  }

  private void show(ClassResults results) {
    picture.show(
        model.isByMistake()
            ? ClassFigures.byMistake(results)
            : ClassFigures.bySymptom(results, model::symptom));
    List<List<String>> rows = new ArrayList<>();
    results.students().forEach(each -> rows.add(row(each, each.student())));
    rows.add(row(results.all(), "Everybody"));
    table.rows(rows);
  }

  private List<String> row(Progress each, String name) {
    List<DrillRecord> drills = each.drills();
    return List.of(
        name,
        Integer.toString(drills.size()),
        Math.round(drills.stream().mapToDouble(DrillRecord::regret).sum()) + " min",
        Integer.toString(drills.stream().mapToInt(DrillRecord::dangers).sum()),
        Certainty.brier(each.certainties()).stream()
            .mapToObj(brier -> String.format(Locale.ROOT, "%.2f", brier))
            .findFirst()
            .orElse(""),
        each.symptoms().keySet().stream().findFirst().map(model::symptom).orElse("")
            + each.mistakes().keySet().stream()
                .findFirst()
                .map(kind -> "; " + kind.said())
                .orElse(""));
  }

  @Override
  public Name name() {
    return new Name("class", "Class", 'A');
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public List<JComponent> regions() {
    return model.gathered().isEmpty() ? List.of(gather) : List.of(gather, picture, table);
  }
}
