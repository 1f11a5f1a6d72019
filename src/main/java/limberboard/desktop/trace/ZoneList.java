package limberboard.desktop.trace;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import limberboard.desktop.drawing.ZoneChoice;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Text;
import limberboard.library.page.Model.Zone;

/** The zones as a list, for the keyboard and for those who listen: it and the drawing are one. */
final class ZoneList extends JPanel {
  private final transient TraceModel model;
  private final transient ZoneChoice zones;
  private final CardList<Entry> list;
  private boolean refreshing;

  /** A zone, or the whole boat when there is no id. */
  private record Entry(Optional<String> id, String title, int symptoms) {
    Card card() {
      Card card = Card.of(title + " (" + symptoms + ")", "");
      return symptoms == 0 ? card.second() : card;
    }
  }

  ZoneList(TraceModel model, ZoneChoice zones) {
    super(new BorderLayout(0, 6));
    this.model = model;
    this.zones = zones;
    setOpaque(false);
    list = new CardList<Entry>("Places on the boat", Entry::card).onChoose(this::choose);
    list.setName("zones");
    list.addListSelectionListener(e -> point());
    Column head = new Column(0);
    head.add(Text.title("Places"));
    add(head, BorderLayout.NORTH);
    add(list.scrolling(), BorderLayout.CENTER);
    model.onChange(this::refresh);
    refresh();
  }

  private void choose(Entry entry) {
    zones.choose(entry.id());
  }

  private void point() {
    if (!refreshing && list.isFocusOwner()) {
      zones.point(list.selected().flatMap(Entry::id));
    }
  }

  private void refresh() {
    refreshing = true;
    List<Entry> entries = new ArrayList<>();
    entries.add(new Entry(Optional.empty(), "Anywhere", model.where().allSymptoms()));
    for (Zone zone : model.where().zones()) {
      entries.add(new Entry(Optional.of(zone.id()), zone.title(), model.where().count(zone.id())));
    }
    if (!entries.equals(list.entries())) {
      list.show(entries);
    }
    entries.stream()
        .filter(entry -> entry.id().equals(model.where().zone()))
        .findFirst()
        .ifPresent(entry -> list.setSelectedValue(entry, true));
    refreshing = false;
  }
}
