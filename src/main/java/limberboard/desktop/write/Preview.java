package limberboard.desktop.write;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.View;
import limberboard.desktop.look.Theme;
import limberboard.desktop.parts.ChoiceBox;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.read.PageRenderer;
import limberboard.desktop.read.PlaceTools;
import limberboard.desktop.read.ReadingPane;
import limberboard.desktop.read.Rendered;
import limberboard.desktop.read.ScreenStyle;
import limberboard.desktop.write.state.Checked;
import limberboard.desktop.write.state.OpenPage;

/** The page as it will be read, for any boat, from the text as it is typed. */
final class Preview implements View {
  private final PlaceTools tools;
  private final Latest latest;
  private final JPanel panel = new JPanel(new BorderLayout(0, 6));
  private final ChoiceBox<Shown> boats;
  private final Wrapped words = Text.quiet("");
  private final ReadingPane pane;
  private Shown shown = Shown.CHOSEN;
  private Optional<OpenPage> page = Optional.empty();
  private Optional<Wanted> asked = Optional.empty();
  private Optional<OpenPage> onScreen = Optional.empty();

  /**
   * For which boat it is shown.
   *
   * @param boat its id; empty for the chosen one, or for all
   * @param all whether it is shown for all boats
   * @param title as a person reads it
   */
  private record Shown(Optional<String> boat, boolean all, String title) {
    static final Shown CHOSEN = new Shown(Optional.empty(), false, "the chosen boat");
    static final Shown ALL = new Shown(Optional.empty(), true, "all boats");
  }

  private record Wanted(
      Checked checked, Optional<Fitting> boat, boolean imperial, boolean dark, ScreenStyle style) {
    boolean isSame(Wanted other) {
      return checked == other.checked
          && boat.equals(other.boat)
          && imperial == other.imperial
          && dark == other.dark
          && style.equals(other.style);
    }
  }

  Preview(PlaceTools tools) {
    this.tools = tools;
    latest = new Latest(tools.background());
    boats =
        new ChoiceBox<>(
            "write-boat",
            "For which boat the page is shown",
            each -> "For " + each.title(),
            this::choose);
    pane =
        new ReadingPane(
            tools.background(),
            address -> tools.navigator().openPage(address.replaceFirst("^page:", "")));
    pane.zoomBy(tools.settings()::stepText);
    panel.setOpaque(false);
    panel.setBorder(BorderFactory.createEmptyBorder(0, 6, 0, 0));
    Column head = new Column(4);
    head.add(Row.wrapping(8, boats));
    head.add(words);
    panel.add(head, BorderLayout.NORTH);
    panel.add(pane, BorderLayout.CENTER);
    tools.session().onChange(this::refresh);
    tools.settings().onChange(this::refresh);
    refresh();
  }

  private void choose(Shown other) {
    shown = other;
    refresh();
  }

  /** Shows another page, or the same as it is typed now. */
  void show(OpenPage other) {
    page = Optional.of(other);
    refresh();
  }

  private void refresh() {
    List<Shown> all = new ArrayList<>(List.of(Shown.CHOSEN, Shown.ALL));
    for (Boat boat : tools.session().workspace().boats()) {
      all.add(new Shown(Optional.of(boat.id()), false, boat.name()));
    }
    if (!all.contains(shown)) {
      shown = Shown.CHOSEN;
    }
    boats.show(all, shown);
    Optional<Checked> checked = page.flatMap(OpenPage::checked);
    boolean none = checked.filter(each -> each.read().page().isEmpty()).isPresent();
    boolean nothing = none && !onScreen.equals(page);
    words.setText(
        nothing
            ? "The page stands here as soon as it has what it must have."
            : none ? "As it was before; it follows again once what must be there is there." : "");
    if (nothing) {
      latest.drop();
      asked = Optional.empty();
      onScreen = Optional.empty();
      pane.clear();
    }
    words.setVisible(none);
    checked.filter(each -> each.read().page().isPresent()).ifPresent(this::render);
  }

  private Optional<Fitting> fitting() {
    if (shown.all()) {
      return Optional.empty();
    }
    return shown.boat().isEmpty()
        ? tools.session().fitting()
        : tools
            .session()
            .workspace()
            .boat(shown.boat().get())
            .map(boat -> new Fitting(boat, tools.session().today()));
  }

  private void render(Checked checked) {
    Wanted wanted =
        new Wanted(
            checked,
            fitting(),
            tools.settings().imperial(),
            Theme.isDark(),
            ScreenStyle.now(tools.settings().textPercent()));
    if (asked.filter(wanted::isSame).isPresent()) {
      return;
    }
    asked = Optional.of(wanted);
    PageRenderer.Order order =
        new PageRenderer.Order(
            checked.read().library(),
            checked.read().page().orElseThrow(),
            wanted.boat(),
            wanted.imperial());
    latest.run(
        "Showing the page",
        () -> tools.renderer().screen(order, wanted.dark(), wanted.style()),
        this::take,
        () -> asked = Optional.empty());
  }

  private void take(Rendered rendered) {
    boolean same = onScreen.equals(page);
    onScreen = page;
    pane.show(rendered, same ? OptionalInt.empty() : OptionalInt.of(0));
  }

  @Override
  public Name name() {
    return new Name("preview", "As it reads", '\0');
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public List<JComponent> regions() {
    return List.of(boats, pane.region());
  }

  @Override
  public Optional<Find> find() {
    return Optional.of(pane.finding());
  }
}
