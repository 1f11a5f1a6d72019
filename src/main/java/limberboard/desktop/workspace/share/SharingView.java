package limberboard.desktop.workspace.share;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.ChoiceBox;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.StackedList;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.read.PlaceTools;
import limberboard.library.page.Page;
import limberboard.library.value.Own;
import limberboard.words.CountWords;

/** Pulling and pushing: with whom, how far it is, what is to be chosen, and what came. */
public final class SharingView implements View {
  private static final int READABLE = 720;
  private final SharingModel model;
  private final PlaceTools tools;
  private final CardLayout cards = new CardLayout();
  private final JPanel panel = new JPanel(cards);
  private final SettlePanel settle;
  private final CardList<String> files;
  private final Wrapped title = Text.title("Sharing");
  private final Wrapped words = Text.plain("");
  private final Wrapped outcome = Text.reading("");
  private final Wrapped doing = Text.reading("");
  private final JProgressBar bar = new JProgressBar();
  private final JButton pull;
  private final JButton push;
  private final JButton begin;
  private final JButton stop;
  private final ChoiceBox<Own> role;
  private final JComponent roleRow;
  private ShareStage before = ShareStage.LOOKING;

  /**
   * A view of the model.
   *
   * @param begin begins a history where there is none
   */
  public SharingView(SharingModel model, PlaceTools tools, Runnable begin) {
    this.model = model;
    this.tools = tools;
    settle = new SettlePanel(model, tools.dividers());
    files = new CardList<String>("Files that changed", this::card).onChoose(this::open);
    files.setName("share-files");
    pull = Buttons.main("Pull what others changed", "share-pull", model::pull);
    push = Buttons.plain("Push what is here", "share-push", model::push);
    this.begin = Buttons.main("Begin a history", "share-begin", begin);
    stop = Buttons.plain("Stop", "share-stop", model::stop);
    role = new ChoiceBox<>("share-role", "Whose copy this is", SharingView::whose, model::role);
    roleRow = Row.wrapping(8, Text.label("This copy is"), role);
    panel.setOpaque(false);
    panel.add(ready(), "ready");
    panel.add(running(), "running");
    panel.add(settle, "settle");
    model.onChange(this::refresh);
    refresh();
  }

  private static String whose(Own own) {
    return switch (own) {
      case OWNER -> "an owner’s";
      case DEALER -> "a dealer’s";
      case YARD -> "the yard’s";
    };
  }

  private JComponent ready() {
    Column above = new Column(10).padded(4, 6, 6, 6).atMost(READABLE);
    above.add(title);
    above.add(words);
    above.add(Row.wrapping(10, pull, push, begin));
    above.add(roleRow);
    above.add(outcome);
    return new StackedList(above, files, new Column(0));
  }

  private JComponent running() {
    Column column = new Column(12).padded(30, 20, 20, 20).atMost(READABLE);
    column.add(doing);
    column.add(bar);
    column.add(Row.wrapping(10, stop));
    Keys.within(column, "ESCAPE", model::stop);
    bar.setName("share-bar");
    bar.getAccessibleContext().setAccessibleName("How far it is");
    JPanel around = new JPanel(new BorderLayout());
    around.setOpaque(false);
    around.add(column.scrolling(), BorderLayout.CENTER);
    return around;
  }

  private Card card(String file) {
    String name = file.substring(file.lastIndexOf('/') + 1).replaceFirst("\\.md$", "");
    Card card = Card.of(tools.session().library().page(name).map(Page::title).orElse(file), file);
    return model.came().merged().contains(file) ? card.ofKind("merged") : card;
  }

  private void open(String file) {
    if (file.endsWith(".md")) {
      tools
          .navigator()
          .openPage(file.substring(file.lastIndexOf('/') + 1).replaceFirst("\\.md$", ""));
    }
  }

  private void refresh() {
    ShareStage stage = model.stage();
    cards.show(
        panel,
        stage == ShareStage.RUNNING
            ? "running"
            : stage == ShareStage.SETTLING ? "settle" : "ready");
    boolean none = stage == ShareStage.NO_HISTORY;
    boolean ready = model.state().isPresent();
    pull.setVisible(ready && !none);
    push.setVisible(ready && !none);
    roleRow.setVisible(ready && !none);
    begin.setVisible(none);
    words.setText(words());
    words.setToolTipText(model.state().flatMap(ShareState::with).orElse(null));
    model.state().ifPresent(state -> role.show(List.of(Own.values()), state.role()));
    List<String> lines = new ArrayList<>(model.came().lines());
    if (!model.trouble().isEmpty()) {
      lines.add(model.trouble());
    }
    outcome.setText(String.join("\n", lines));
    outcome.setVisible(!lines.isEmpty());
    if (!files.entries().equals(model.came().files())) {
      files.show(model.came().files());
    }
    progress();
    settle.refresh();
    panel.revalidate();
    panel.repaint();
    if (stage != before) {
      before = stage;
      goOn();
    }
  }

  /** The focus goes on to what can be done now. */
  private void goOn() {
    if (panel.isShowing()) {
      Later.run(() -> Sides.goTo(regions().get(0)));
    }
  }

  private void progress() {
    Progressing.Step step = model.step();
    doing.setText(
        step.what() + (step.total() > 0 ? ": " + step.done() + " of " + step.total() + "." : " …"));
    bar.setIndeterminate(step.total() <= 0 && model.stage() == ShareStage.RUNNING);
    bar.setMaximum(Math.max(1, step.total()));
    bar.setValue(step.done());
  }

  private String words() {
    return switch (model.stage()) {
      case LOOKING -> "Looking with what this workspace is shared …";
      case NO_HISTORY ->
          "A workspace is shared by its history, and this one has none yet. It is an ordinary Git"
              + " repository in the workspace’s folder; nothing leaves this machine until you"
              + " push.";
      default ->
          model
              .state()
              .map(
                  state ->
                      state
                              .with()
                              .map(with -> "Shared with " + SharingModel.shortened(with) + ".")
                              .orElse(
                                  "Not shared with anybody yet; it is asked with what the first"
                                      + " time.")
                          + " Pull takes what the other copy has and merges it with what is here,"
                          + " by header key and paragraph. Push sends what is here. Nothing happens"
                          + " unasked."
                          + (state.unrecorded() == 0
                              ? ""
                              : " "
                                  + CountWords.of(state.unrecorded(), "file")
                                  + " changed here since the last version will be recorded first."))
              .orElse("");
    };
  }

  @Override
  public Name name() {
    return new Name("sharing", "Sharing", 'S');
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public List<JComponent> regions() {
    return switch (model.stage()) {
      case SETTLING -> settle.regions();
      case RUNNING -> List.of(stop);
      case NO_HISTORY -> List.of(begin);
      default -> files.entries().isEmpty() ? List.of(pull) : List.of(files, pull);
    };
  }
}
