package limberboard.desktop.trace;

import java.awt.BorderLayout;
import java.util.List;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;

/** What do you notice? The symptoms of the chosen zone that fit the boat, or all of them. */
final class SymptomList extends JPanel {
  private final transient TraceModel model;
  private final Wrapped where = Text.quiet("");
  private final CardList<Noticed> list;
  private final JCheckBox everything = new JCheckBox("Show everything");

  SymptomList(TraceModel model) {
    super(new BorderLayout(0, 6));
    this.model = model;
    setOpaque(false);
    list = new CardList<Noticed>("What do you notice?", this::card).framed().onChoose(this::choose);
    list.setName("symptoms");
    everything.setName("everything");
    everything.setMnemonic('h');
    everything.setToolTipText("Symptoms of other places, and those of other boats with the reason");
    everything.addActionListener(e -> model.where().everything(everything.isSelected()));
    Column head = new Column(2);
    head.add(Text.title("What do you notice?"));
    head.add(where);
    add(head, BorderLayout.NORTH);
    add(list.scrolling(), BorderLayout.CENTER);
    add(everything, BorderLayout.SOUTH);
    model.onChange(this::refresh);
    refresh();
  }

  private void choose(Noticed noticed) {
    if (noticed.fit().fits()) {
      model.start(noticed.page().id());
    }
  }

  private void refresh() {
    List<Noticed> symptoms = model.where().symptoms();
    if (!symptoms.equals(list.entries())) {
      list.show(symptoms);
    } else {
      list.refreshHeights();
    }
    everything.setSelected(model.where().everything());
    where.setText(words(symptoms));
  }

  private String words(List<Noticed> symptoms) {
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

  private Card card(Noticed noticed) {
    Card card = Card.of(noticed.page().title(), noticed.page().head().summary());
    if (!noticed.fit().fits()) {
      card = card.second().noting("Not on this boat: " + noticed.fit().reason());
    }
    int answers = model.answersGiven(noticed.page().id());
    if (answers > 0) {
      card = card.noting("Begun: " + answers + (answers == 1 ? " answer" : " answers"));
    }
    return isFirstOfGroup(noticed) ? card.under(group(noticed)) : card;
  }

  private boolean isFirstOfGroup(Noticed noticed) {
    if (!model.where().everything()) {
      return false;
    }
    return model.where().symptoms().stream()
        .filter(other -> group(other).equals(group(noticed)))
        .findFirst()
        .filter(noticed::equals)
        .isPresent();
  }

  private String group(Noticed noticed) {
    if (!noticed.fit().fits()) {
      return "Not on this boat";
    }
    if (model.where().zone().isEmpty()) {
      return "On this boat";
    }
    return noticed.here() ? "Here" : "Elsewhere on this boat";
  }
}
