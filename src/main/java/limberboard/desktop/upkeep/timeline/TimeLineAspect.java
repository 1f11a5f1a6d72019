package limberboard.desktop.upkeep.timeline;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import limberboard.desktop.base.View;
import limberboard.desktop.look.Theme;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.upkeep.state.UpkeepTools;
import limberboard.desktop.upkeep.timeline.TimeLineModel.Drawn;
import limberboard.print.drawing.TimeLineWords;
import limberboard.upkeep.TimeLine;
import limberboard.words.Sentences;

/** The work of the coming seasons, drawn along the time, or in words. */
public final class TimeLineAspect implements View {
  /** Where there is less height than this, the drawing takes it all. */
  private static final int ROOMY = 300;

  private final TimeLineModel model;
  private final UpkeepTools tools;
  private final JPanel panel;
  private final CardLayout cards = new CardLayout();
  private final JPanel shown = new JPanel(cards);
  private final TimeLineView head = new TimeLineView(true);
  private final TimeLineView body = new TimeLineView(false);
  private final CardList<TimeLine.Row> words =
      new CardList<>("Work by part of the boat", this::card);
  private final Wrapped seasons = Text.plain("");
  private final JButton turn = Buttons.plain("", this::turn);
  private transient Optional<Drawn> onScreen = Optional.empty();

  /** The aspect. */
  public TimeLineAspect(UpkeepTools tools) {
    this.tools = tools;
    this.model = new TimeLineModel(tools.upkeep(), tools.place().background());
    this.panel = new Watched();
    body.setName("time-line");
    words.setName("time-line-words");
    words.framed().onChoose(row -> tools.place().navigator().openPage(row.page()));
    turn.setName("time-line-turn");
    JButton save = Buttons.plain("Save as PDF …", "save-due", this::save);
    JButton print =
        Buttons.plain(
            "Print …", "time-line-print", "What is due and this time line", this::printSheet);
    save.setToolTipText("What is due and this time line, as a sheet to print");
    Column top = new Column(6);
    top.add(seasons);
    top.add(Row.wrapping(8, turn, print, save));
    JScrollPane scroller = new JScrollPane(body);
    scroller.setColumnHeaderView(head);
    scroller.setBorder(BorderFactory.createEmptyBorder());
    shown.setOpaque(false);
    shown.add(scroller, "drawn");
    shown.add(words.scrolling(), "words");
    panel.add(top, BorderLayout.NORTH);
    When.resized(panel, () -> seasons.setVisible(panel.getHeight() >= UIScale.scale(ROOMY)));
    panel.add(shown, BorderLayout.CENTER);
    model.onChange(this::refresh);
    refresh();
  }

  /** Tells the model whether it is looked at, and when the colours change. */
  private final class Watched extends JPanel {
    Watched() {
      super(new BorderLayout(0, 8));
      setOpaque(false);
      When.showing(this, () -> model.want(isShowing(), Theme.isDark()));
    }

    @Override
    public void updateUI() {
      super.updateUI();
      if (model != null && isShowing()) {
        model.want(true, Theme.isDark());
      }
    }
  }

  private void turn() {
    model.inWords(!model.isInWords());
    regions().get(0).requestFocusInWindow();
  }

  private void save() {
    new DuePaper(model.upkeep()).give(tools.place().papers()::save);
  }

  private void printSheet() {
    new DuePaper(model.upkeep()).give(tools.place().papers()::print);
  }

  private Card card(TimeLine.Row row) {
    Card card = Card.of(row.title(), Sentences.capital(TimeLineWords.when(row)));
    return onScreen
        .flatMap(
            drawn ->
                drawn.line().groups().stream()
                    .filter(group -> group.rows().get(0).equals(row))
                    .findFirst())
        .map(group -> card.under(group.title()))
        .orElse(card);
  }

  private void refresh() {
    Optional<Drawn> drawn = model.drawn();
    if (drawn.isEmpty() || onScreen.filter(before -> before == drawn.get()).isEmpty()) {
      onScreen = drawn;
      String summary = drawn.map(now -> TimeLineWords.summary(now.line())).orElse("");
      head.show(drawn.flatMap(Drawn::picture), "");
      body.show(drawn.flatMap(Drawn::picture), summary);
      words.show(drawn.map(now -> now.line().rows()).orElse(List.of()));
      seasons.setText(drawn.map(now -> said(now.line())).orElse("Drawing the time line …"));
    }
    turn.setText(model.isInWords() ? "Show it drawn" : "Show it in words");
    cards.show(shown, model.isInWords() ? "words" : "drawn");
    panel.revalidate();
    panel.repaint();
  }

  private static String said(TimeLine line) {
    if (line.rows().isEmpty()) {
      return "Nothing comes up in these seasons: no page that fits this boat says how often its"
          + " work is done.";
    }
    return "A dot is planned work, a triangle is overdue work to be done now, a bar is work that"
        + " comes often; shaded is afloat."
        + (line.later() == 0 ? "" : " " + line.later() + " more come later.");
  }

  @Override
  public Name name() {
    return new Name("time-line", "Time line", 'L');
  }

  @Override
  public Optional<Runnable> print() {
    return Optional.of(this::printSheet);
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public List<JComponent> regions() {
    return List.of(model.isInWords() ? words : body, turn);
  }
}
