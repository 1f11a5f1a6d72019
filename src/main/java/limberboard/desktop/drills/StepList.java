package limberboard.desktop.drills;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.StackedList;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.trace.CautionLines;
import limberboard.drill.DrillRun;
import limberboard.drill.StepDone;
import limberboard.words.CountWords;
import limberboard.words.Minutes;

/** What came of the last step, and everything that can be done next. The class may vote here. */
final class StepList extends JPanel {
  private static final int DIGITS = 10;
  private final transient DrillModel model;
  private final Wrapped asked = Text.plain("");
  private final Wrapped answer = Text.question("");
  private final Wrapped minutes = Text.strong("");
  private final Wrapped said = Text.plain("");
  private final JToggleButton vote = new JToggleButton("Let the class vote");
  private final CautionLines cautions;
  private final CardList<StepOffer> list;
  private List<StepOffer> offers = List.of();

  /**
   * A list.
   *
   * @param model the drill
   * @param whole shows the whole text of all cautions
   */
  StepList(DrillModel model, Runnable whole) {
    super(new BorderLayout());
    this.model = model;
    setOpaque(false);
    setBorder(BorderFactory.createEmptyBorder(0, 0, 0, 8));
    list = new CardList<StepOffer>("What do you do?", this::card).framed().onChoose(this::choose);
    list.setName("drill-steps");
    cautions = new CautionLines(model, "drill-cautions", whole, list::requestFocusInWindow);
    answer.setName("drill-answer");
    minutes.setName("drill-minutes");
    said.setName("drill-said");
    vote.setName("drill-vote");
    vote.setToolTipText("Alt+V: type the hands on each step, Enter takes the most voted");
    vote.setMnemonic('V');
    vote.addActionListener(e -> votes(vote.isSelected()));
    Keys.focused(vote, "ENTER", vote::doClick);
    Column above = new Column(6).padded(0, 0, 6, 0);
    above.add(cautions);
    above.add(asked);
    above.add(answer);
    above.add(Row.worded(8, minutes, vote));
    above.add(said);
    add(new StackedList(above, list, new Column(0)));
    for (int digit = 0; digit < DIGITS; digit++) {
      int typed = digit;
      Keys.focused(list, String.valueOf(digit), () -> type(typed));
      Keys.focused(list, "NUMPAD" + digit, () -> type(typed));
    }
    Keys.focused(list, "BACK_SPACE", this::takeBack);
  }

  private void votes(boolean on) {
    model.votes().on(on);
    list.requestFocusInWindow();
  }

  private void type(int digit) {
    if (model.votes().isOn()) {
      list.selected()
          .ifPresent(offer -> model.votes().note(model.votes().now().digit(offer.title(), digit)));
    }
  }

  private void takeBack() {
    if (model.votes().isOn()) {
      list.selected()
          .ifPresent(offer -> model.votes().note(model.votes().now().back(offer.title())));
    }
  }

  /** Opens the chosen step, or the most voted one where the class has voted. */
  private void choose(StepOffer chosen) {
    List<String> most = model.votes().now().most();
    Optional<StepOffer> voted =
        most.size() == 1
            ? offers.stream().filter(each -> each.title().equals(most.get(0))).findFirst()
            : Optional.empty();
    boolean among = most.isEmpty() || most.contains(chosen.title());
    if (voted.isPresent() || among) {
      model.open(voted.or(() -> Optional.of(chosen)));
    } else {
      say("It is a tie. Choose one of these, or let them vote again:\n" + String.join("\n", most));
    }
  }

  private void say(String words) {
    said.setText(words);
    said.setVisible(!words.isEmpty());
    revalidate();
  }

  private Card card(StepOffer offer) {
    int at = offers.indexOf(offer);
    boolean begins = at <= 0 || !offers.get(at - 1).kind().group().equals(offer.kind().group());
    int hands = model.votes().now().of(offer.title());
    Card card = Card.of(offer.title(), offer.facts()).noting(offer.found());
    return (hands > 0 ? card.ofKind(CountWords.of(hands, "hand")) : card)
        .under(begins ? offer.kind().group() : "");
  }

  void show(DrillRun run) {
    cautions.show(model.cautions());
    offers = new StepOffers(run).all();
    list.show(offers);
    list.refreshHeights();
    Optional<StepDone> last = run.last();
    asked.setText(last.map(done -> StepOffers.title(run, done.step())).orElse(""));
    asked.setVisible(last.isPresent());
    answer.setText(
        model.hint().isEmpty()
            ? last.map(StepOffers::said).orElse("What do you do?")
            : "Best now: " + model.hint());
    minutes.setText(
        Minutes.words(run.minutes())
            + " so far"
            + (run.open().isEmpty() ? "" : ". Open: " + String.join(", ", run.open())));
    boolean voting = model.votes().isOn();
    vote.setSelected(voting);
    say(voting ? voteWords() : leftOut(last));
    repaint();
  }

  private String voteWords() {
    List<String> most = model.votes().now().most();
    if (most.isEmpty()) {
      return "Go to a step and type how many hands it has. Enter then takes the most voted.";
    }
    return model.votes().now().words()
        + (most.size() == 1
            ? "\nEnter takes the first of these."
            : "\nIt is a tie: choose one, or let them vote again.");
  }

  /** What the last step left out: it is told at once, since somebody could be hurt. */
  private static String leftOut(Optional<StepDone> last) {
    return last.map(StepDone::unheeded).orElse(List.of()).stream()
        .map(each -> "You left out: " + each.title() + ". " + each.danger() + " " + each.rule())
        .collect(Collectors.joining("\n"));
  }

  JComponent first() {
    return list;
  }

  List<JComponent> regions() {
    return List.of(list, vote);
  }
}
