package limberboard.desktop.upkeep;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.Icon;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.text.JTextComponent;
import limberboard.boat.Boat;
import limberboard.desktop.base.Place;
import limberboard.desktop.base.View;
import limberboard.desktop.boats.WhichBoatPanel;
import limberboard.desktop.look.LineIcon;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.upkeep.due.DueAspect;
import limberboard.desktop.upkeep.due.DueModel;
import limberboard.desktop.upkeep.log.LogAspect;
import limberboard.desktop.upkeep.log.LogDraft;
import limberboard.desktop.upkeep.log.LogListModel;
import limberboard.desktop.upkeep.sheets.AppointmentsAspect;
import limberboard.desktop.upkeep.sheets.ListAspect;
import limberboard.desktop.upkeep.sheets.PlanAspect;
import limberboard.desktop.upkeep.sheets.RiggingAspect;
import limberboard.desktop.upkeep.sheets.ShoppingAspect;
import limberboard.desktop.upkeep.start.StartAspect;
import limberboard.desktop.upkeep.start.StartModel;
import limberboard.desktop.upkeep.state.TickedWork;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.desktop.upkeep.state.UpkeepTools;
import limberboard.desktop.upkeep.sums.WorkingsAspect;
import limberboard.desktop.upkeep.timeline.TimeLineAspect;
import limberboard.upkeep.Due;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.start.Start.Standing;

/** The place for a boat's upkeep: what is due, when it comes, the log. */
public final class UpkeepPlace implements Place {
  private static final int ICON = 26;
  private static final String WRONG_DAY = "wrong-day";
  private final UpkeepModel model;
  private final List<View> aspects;
  private final CardLayout cards = new CardLayout();
  private final JPanel panel = new JPanel(cards);
  private final CardLayout views = new CardLayout();
  private final JPanel view = new JPanel(views);
  private final WhichBoatPanel noBoat;
  private final UpkeepTop top;
  private final Wrapped refused = Text.reading("");
  private Supplier<Set<String>> halfTyped = Set::of;
  private Consumer<String> logging = page -> {};
  private View now;

  /** The place with its aspects, in the order of their buttons. */
  public static UpkeepPlace make(UpkeepTools tools) {
    DueModel due = new DueModel(tools.upkeep(), tools.log());
    LogListModel lines = new LogListModel(tools.upkeep(), tools.log());
    StartModel start = new StartModel(tools.upkeep(), tools.log());
    TickedWork wanted = new TickedWork();
    UpkeepPlace place =
        new UpkeepPlace(
            tools,
            List.of(
                new StartAspect(tools, start),
                new DueAspect(tools, due, wanted),
                new AppointmentsAspect(tools),
                new TimeLineAspect(tools),
                new ListAspect(tools, due, wanted).view(),
                new PlanAspect(tools, due, wanted).view(),
                new ShoppingAspect(tools, wanted).view(),
                new RiggingAspect(tools, wanted).view(),
                new WorkingsAspect(tools),
                new LogAspect(tools, lines)));
    place.halfTyped =
        () -> {
          Set<String> boats = new TreeSet<>(due.halfTyped());
          boats.addAll(lines.halfTyped());
          boats.addAll(start.halfTyped());
          return boats;
        };
    start.onChange(() -> place.offer(start.standing()));
    start.afterWriting(place::listWhatIsDue);
    place.offer(start.standing());
    wanted.onGo(() -> place.look("shopping"));
    place.logging = page -> place.logWork(page, due, lines);
    return place;
  }

  UpkeepPlace(UpkeepTools tools, List<View> aspects) {
    this.model = tools.upkeep();
    this.aspects = List.copyOf(aspects);
    this.now = aspects.stream().filter(each -> !isStart(each)).findFirst().orElseThrow();
    this.noBoat =
        new WhichBoatPanel(
            model.session(),
            "upkeep-boats",
            "what is due follows from its model, year, what is fitted, and its log.",
            "What is due is worked out for one boat.",
            tools.place().navigator()::newBoat);
    this.top = new UpkeepTop(tools.upkeep(), tools.log(), this.aspects, this::look, this::back);
    view.setOpaque(false);
    aspects.forEach(aspect -> view.add(aspect.component(), aspect.id()));
    JPanel work = new JPanel(new BorderLayout(0, 10));
    work.setBorder(BorderFactory.createEmptyBorder(12, 18, 12, 18));
    work.add(top, BorderLayout.NORTH);
    work.add(view, BorderLayout.CENTER);
    view.add(wrongDay(), WRONG_DAY);
    panel.add(noBoat, "no-boat");
    panel.add(work, "work");
    Keys.within(work, "control Z", outsideText(tools.log()::undo));
    Keys.within(work, "control shift Z", outsideText(tools.log()::redo));
    Keys.within(work, "control Y", outsideText(tools.log()::redo));
    model.onChange(this::refresh);
    top.mark(now);
    refresh();
  }

  private static boolean isStart(View aspect) {
    return aspect.id().equals(StartAspect.ID);
  }

  /** The start has a button while there is something to begin, and while it is looked at. */
  private void offer(Standing standing) {
    top.offer(StartAspect.ID, standing != Standing.NOTHING || isStart(now));
  }

  /** Goes where the log of the chosen boat, which was bought, is begun. */
  public void beginLog() {
    top.offer(StartAspect.ID, true);
    look(StartAspect.ID);
  }

  /** In a field these keys are for what is typed there, also when there is nothing to take back. */
  private static Runnable outsideText(Runnable action) {
    return () -> {
      Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
      if (!(owner instanceof JTextComponent)) {
        action.run();
      }
    };
  }

  /** Shows an aspect by its name; without effect when there is none of this name. */
  public void look(String aspect) {
    aspects.stream().filter(one -> one.id().equals(aspect)).findFirst().ifPresent(this::look);
  }

  /** Goes to the list of what is due, with the focus in it once it is laid out. */
  private void listWhatIsDue() {
    look("due");
    back();
  }

  /** Goes where the work of a page is marked done, or else into a new line of the log. */
  public void logWork(String page) {
    logging.accept(page);
  }

  private void logWork(String page, DueModel due, LogListModel lines) {
    Optional<Due> recurs =
        model.upkeep().map(Upkeep::all).orElse(List.of()).stream()
            .filter(each -> each.id().equals(page))
            .findFirst();
    if (recurs.isPresent()) {
      if (recurs.get().group() == Due.Group.COMING) {
        due.showComing(true);
      }
      due.select(page);
      look("due");
    } else {
      lines.event(LogDraft.WORK);
      model.works().stream()
          .filter(work -> work.id().equals(page))
          .findFirst()
          .ifPresent(lines::chooseWork);
      look("log");
    }
  }

  @Override
  public Optional<Runnable> print() {
    return top.isShowing() ? now.print() : Optional.empty();
  }

  @Override
  public Optional<Find> find() {
    return top.isShowing() ? now.find() : Optional.empty();
  }

  private void look(View aspect) {
    now = aspect;
    refresh();
    top.mark(aspect);
    if (panel.isShowing() && model.refusedDay().isEmpty()) {
      Sides.goTo(aspect.regions().get(0));
    }
  }

  /** Puts the focus back into what is looked at. */
  private void back() {
    if (model.refusedDay().isEmpty()) {
      Later.focus(now.regions().get(0));
    }
  }

  private JComponent wrongDay() {
    Column column = new Column(10).padded(24, 8, 8, 8);
    column.add(refused);
    JButton correct = Buttons.plain("Correct the day", top::focusDay);
    JButton back = Buttons.plain("Back to the day before", model::forgetRefusedDay);
    column.add(Row.wrapping(10, correct, back));
    return column;
  }

  private void refresh() {
    boolean boat =
        switch (model.state()) {
          case READING, NO_BOAT -> false;
          case WORKING, READY -> true;
        };
    cards.show(panel, boat ? "work" : "no-boat");
    refused.setText(
        model.refusedDay()
            + " Until then nothing is shown, so that no list of another day is taken for it.");
    views.show(view, model.refusedDay().isEmpty() ? now.id() : WRONG_DAY);
  }

  /** Asks when something half typed for a log would be lost. */
  @Override
  public boolean mayClose() {
    Set<String> boats = halfTyped.get();
    if (boats.isEmpty()) {
      return true;
    }
    Object[] answers = {"Stay here", "Close and drop it"};
    return JOptionPane.showOptionDialog(
            panel,
            "Something is half typed for the log of "
                + boats.stream().map(this::name).collect(Collectors.joining(", "))
                + " and not written.",
            "Not written yet",
            JOptionPane.DEFAULT_OPTION,
            JOptionPane.PLAIN_MESSAGE,
            null,
            answers,
            answers[0])
        == 1;
  }

  private String name(String id) {
    return model.workspace().boat(id).map(Boat::name).orElse(id);
  }

  @Override
  public Name name() {
    return new Name("upkeep", "Upkeep", 'U');
  }

  @Override
  public Icon icon() {
    return LineIcon.upkeep(ICON);
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public List<JComponent> regions() {
    if (!top.isShowing() && noBoat.isShowing()) {
      return noBoat.regions();
    }
    List<JComponent> regions = new java.util.ArrayList<>();
    if (model.refusedDay().isEmpty()) {
      regions.addAll(now.regions());
    }
    regions.addAll(top.regions());
    return regions;
  }
}
