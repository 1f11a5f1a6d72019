package limberboard.desktop.trace;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.LimitedHeight;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.words.CountWords;

/** What do you notice? The symptoms of the chosen zone that fit the boat, or all of them. */
final class SymptomList extends JPanel {
  private final transient TraceModel model;
  private final Wrapped where = Text.quiet("");
  private final CardList<Entry> list;
  private final JCheckBox everything = new JCheckBox("Show everything");

  SymptomList(TraceModel model) {
    super(new BorderLayout(0, 6));
    this.model = model;
    setOpaque(false);
    list = new CardList<Entry>("What do you notice?", Entry::card).framed().onChoose(this::choose);
    list.setName("symptoms");
    everything.setName("everything");
    everything.setMnemonic('h');
    everything.setToolTipText("Symptoms of other places, and those of other boats with the reason");
    everything.addActionListener(e -> model.where().everything(everything.isSelected()));
    Column head = new Column(2);
    head.add(new LimitedHeight(new KeptList(model), () -> getHeight() / 3));
    head.add(Text.title("What do you notice?"));
    head.add(where);
    add(head, BorderLayout.NORTH);
    add(list.scrolling(), BorderLayout.CENTER);
    add(everything, BorderLayout.SOUTH);
    model.onChange(this::refresh);
    refresh();
  }

  private void choose(Entry entry) {
    if (entry.noticed().fit().fits()) {
      model.start(entry.noticed().page().id());
    }
  }

  private void refresh() {
    List<Entry> entries = entries(model.where().symptoms());
    if (!entries.equals(list.entries())) {
      list.show(entries);
    } else {
      list.refreshHeights();
    }
    everything.setSelected(model.where().everything());
    where.setText(words(entries));
  }

  private List<Entry> entries(List<OfferedSymptom> symptoms) {
    List<Entry> entries = new ArrayList<>();
    String before = "";
    for (OfferedSymptom noticed : symptoms) {
      String group = model.where().everything() ? group(noticed) : "";
      entries.add(
          new Entry(
              noticed, group.equals(before) ? "" : group, model.answersGiven(noticed.page().id())));
      before = group;
    }
    return entries;
  }

  private String words(List<Entry> symptoms) {
    if (!model.where().isReady()) {
      return "Looking which symptoms fit this boat …";
    }
    String place =
        model
            .where()
            .zone()
            .map(id -> "In: " + model.where().title(id) + ".")
            .orElse("Anywhere on the boat.");
    if (symptoms.isEmpty()) {
      return place
          + " The library has no symptom for this place on this boat. Choose another place, or show"
          + " everything.";
    }
    return place + " Choose what comes nearest.";
  }

  private String group(OfferedSymptom noticed) {
    if (!noticed.fit().fits()) {
      return "Not on this boat";
    }
    if (model.where().zone().isEmpty()) {
      return "On this boat";
    }
    return noticed.here() ? "Here" : "Elsewhere on this boat";
  }

  /**
   * A line of the list.
   *
   * @param noticed the symptom
   * @param group the heading above it, empty when it is not the first of its group
   * @param answers how many answers have been given
   */
  private record Entry(OfferedSymptom noticed, String group, int answers) {
    Card card() {
      Card card = Card.of(noticed.page().title(), noticed.page().head().summary());
      if (!noticed.fit().fits()) {
        card = card.second().noting("Not on this boat: " + noticed.fit().reason());
      }
      if (answers > 0) {
        card = card.noting("Begun: " + CountWords.of(answers, "answer"));
      }
      return group.isEmpty() ? card : card.under(group);
    }
  }
}
