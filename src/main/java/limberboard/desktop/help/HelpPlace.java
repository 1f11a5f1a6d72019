package limberboard.desktop.help;

import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import limberboard.desktop.base.Place;
import limberboard.desktop.look.LineIcon;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.read.PlaceTools;
import limberboard.desktop.read.SheetReader;

/** The place where the user guide is read. */
public final class HelpPlace implements Place {
  private static final int ICON = 26;
  private final Guide guide;
  private final SheetReader reader;
  private final CardList<Guide.Part> contents;
  private final Divider panel;
  private Optional<Guide.Part> shown = Optional.empty();
  private Runnable changed = () -> {};

  /**
   * The place.
   *
   * @param tools what places are made with
   * @param guide what is read
   */
  public HelpPlace(PlaceTools tools, Guide guide) {
    this.guide = guide;
    this.reader = tools.sheets(this::follow);
    contents =
        new CardList<Guide.Part>("Contents of the guide", HelpPlace::card)
            .framed()
            .onChoose(this::open);
    contents.setName("guide-contents");
    contents.show(guide.parts());
    contents.addListSelectionListener(
        e -> {
          if (!e.getValueIsAdjusting()) {
            contents.selected().ifPresent(this::open);
          }
        });
    JScrollPane list = contents.scrolling();
    list.setBorder(BorderFactory.createEmptyBorder(14, 14, 10, 6));
    panel = Divider.beside("help-contents", list, reader.pane(), 0.26, tools.dividers());
  }

  private static Card card(Guide.Part part) {
    return part.level() == 1
        ? Card.of(part.title(), "")
        : Card.of("   ".repeat(part.level() - 1) + part.title(), "");
  }

  /** Opens the part about a place of the window. */
  public void openFor(String place) {
    guide.about(place).ifPresent(part -> contents.setSelectedValue(part, true));
  }

  private void follow(String id) {
    guide.part(id).ifPresent(part -> contents.setSelectedValue(part, true));
  }

  private void open(Guide.Part part) {
    if (!shown.equals(Optional.of(part))) {
      shown = Optional.of(part);
      reader.show(guide.page(part));
      changed.run();
    }
  }

  /** The part that is shown. */
  public Optional<Guide.Part> shown() {
    return shown;
  }

  @Override
  public Optional<String> subject() {
    return shown.map(part -> "Help: " + part.title());
  }

  @Override
  public void onSubject(Runnable listener) {
    changed = listener;
  }

  @Override
  public Name name() {
    return new Name("help", "Help", 'H');
  }

  @Override
  public Icon icon() {
    return LineIcon.help(ICON);
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public List<JComponent> regions() {
    return List.of(contents, reader.pane());
  }
}
