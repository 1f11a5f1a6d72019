package limberboard.desktop.upkeep.start;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.upkeep.Due;
import limberboard.upkeep.start.StartQuestion;

/** The questions of the start, one below the other; Enter goes from one to the next. */
final class StartForm extends Column {
  private static final int INDENT = 24;
  private static final List<Told> WHOLE =
      Arrays.stream(Told.values()).filter(told -> told != Told.AS_ABOVE).toList();
  private static final List<Told> ONLY = WHOLE.stream().filter(told -> told != Told.EACH).toList();
  private static final List<Told> SINGLE =
      Arrays.stream(Told.values()).filter(told -> told != Told.EACH).toList();

  private final transient StartModel model;
  private final transient Runnable last;
  private final transient Map<String, Asked> lines = new LinkedHashMap<>();
  private transient List<StartQuestion> shown = List.of();

  private record Asked(
      StartQuestion question, StartRow row, Wrapped facts, JButton each, Column singles) {}

  /**
   * A form.
   *
   * @param last is called when Enter is pressed in the last line
   */
  StartForm(StartModel model, Runnable last) {
    super(10);
    this.model = model;
    this.last = last;
  }

  /** Where the keyboard begins. */
  Optional<JComponent> first() {
    return lines.values().stream().findFirst().map(asked -> asked.row().first());
  }

  /** Shows what the model has. */
  void refresh() {
    if (!model.questions().equals(shown)) {
      shown = model.questions();
      removeAll();
      lines.clear();
      shown.forEach(this::add);
    }
    lines.values().forEach(this::refresh);
    revalidate();
    repaint();
  }

  private void add(StartQuestion question) {
    Wrapped facts = Text.quiet("");
    Column words = new Column(0);
    words.add(Text.strong(question.title()));
    words.add(facts);
    JButton each = Buttons.plain("", "start-each-" + question.id(), () -> model.turn(question));
    List<Told> choices = question.parts().size() > 1 ? WHOLE : ONLY;
    StartRow row =
        new StartRow(
            question.id(),
            words,
            question.title(),
            choices,
            heard(() -> model.key(question)),
            each);
    row.onEnter(this::next);
    Column singles = new Column(4).padded(2, INDENT, 6, 0);
    singles.setVisible(false);
    lines.put(question.id(), new Asked(question, row, facts, each, singles));
    add(row);
    add(singles);
  }

  private StartRow.Heard heard(Supplier<String> id) {
    return new StartRow.Heard() {
      @Override
      public void told(Told choice) {
        model.tell(id.get(), choice);
      }

      @Override
      public void when(String text) {
        model.when(id.get(), text);
      }
    };
  }

  private void refresh(Asked asked) {
    StartQuestion question = asked.question();
    asked.facts().setText(model.facts(question));
    Told told = model.told(question);
    String below =
        told == Told.NOT_ABOARD ? model.notAboard(question) : model.problem(model.key(question));
    asked.row().refresh(told, model.when(model.key(question)), below);
    boolean open = model.isUnfolded(question);
    asked.each().setVisible(question.parts().size() > 1);
    asked.each().setText(open ? "Fold" : "Each …");
    asked
        .each()
        .setToolTipText(open ? "Answer all of it at once" : "Answer each piece of work by itself");
    asked.each().getAccessibleContext().setAccessibleName("Each of " + question.title());
    asked.singles().setVisible(open);
    if (open && asked.singles().getComponentCount() == 0) {
      question.parts().forEach(due -> asked.singles().add(single(due)));
    }
    if (open) {
      List<Due> works = question.parts();
      for (int i = 0; i < works.size(); i++) {
        String page = works.get(i).work().id();
        StartRow row = (StartRow) asked.singles().getComponent(i);
        row.refresh(model.told(works.get(i)), model.when(page), model.problem(page));
      }
    }
  }

  private StartRow single(Due due) {
    String page = due.work().id();
    String by = due.isLook() ? "" : " (a survey does not tell)";
    StartRow row =
        new StartRow(
            page, Text.plain(due.work().title() + by), due.title(), SINGLE, heard(() -> page));
    row.onEnter(this::next);
    return row;
  }

  private void next(StartRow from) {
    List<StartRow> rows = new ArrayList<>();
    for (Asked asked : lines.values()) {
      rows.add(asked.row());
      if (asked.singles().isVisible()) {
        for (var single : asked.singles().getComponents()) {
          rows.add((StartRow) single);
        }
      }
    }
    int at = rows.indexOf(from) + 1;
    if (at < rows.size()) {
      rows.get(at).first().requestFocusInWindow();
    } else {
      last.run();
    }
  }
}
