package limberboard.desktop.boats;

import java.awt.BorderLayout;
import java.awt.Rectangle;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import limberboard.boat.Boat;
import limberboard.desktop.boats.ChoiceInput.Item;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Form;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.library.page.Model.Choice;
import limberboard.library.page.Model.Equipment;
import limberboard.library.value.Exposure;
import limberboard.library.value.Use;
import limberboard.library.value.Water;
import limberboard.library.value.Word;
import limberboard.words.Sentences;

/** The form of one boat. */
final class BoatForm extends JPanel {
  private final transient BoatFormModel model;
  private final Wrapped title = Text.title("");
  private final Wrapped state = Text.quiet("");
  private final Column column = new Column(12).padded(14, 10, 10, 14);
  private final Form facts = new Form(8);
  private final Map<Field, TextInput> texts = new EnumMap<>(Field.class);
  private final Map<String, ChoiceInput> fitted = new LinkedHashMap<>();
  private final ChoiceInput modelInput;
  private final ChoiceInput use;
  private final ChoiceInput water;
  private final ChoiceInput exposure;
  private final JButton save;
  private final JButton undo;
  private final JButton drop;
  private final JButton choose;
  private final JButton begin;
  private int rows;
  private List<Equipment> shown = List.of();

  BoatForm(BoatFormModel model, Consumer<String> beginLog) {
    super(new BorderLayout());
    this.model = model;
    setOpaque(false);
    modelInput = new ChoiceInput("boat-MODEL", id -> model.form().set(Field.MODEL, id));
    use = new ChoiceInput("boat-USE", word -> model.form().set(Field.USE, word));
    water = new ChoiceInput("boat-WATER", word -> model.form().set(Field.WATER, word));
    exposure = new ChoiceInput("boat-EXPOSURE", word -> model.form().set(Field.EXPOSURE, word));
    save = Buttons.main("Save", "save-boat", model::save);
    save.setToolTipText("Ctrl+S");
    undo = Buttons.plain("Undo", "undo", "Ctrl+Z", model.form()::undo);
    drop = Buttons.plain("Drop changes", model::dropChanges);
    choose = Buttons.plain("Work with this boat", model::chooseForAll);
    choose.setToolTipText("Makes it the boat that everything here is about");
    begin =
        Buttons.plain(
            "Say what is known of her",
            "begin-log",
            () -> model.form().original().map(Boat::id).ifPresent(beginLog));
    begin.setMnemonic('K');
    begin.setToolTipText("Begins her log with a survey, bills, and what the owner before said");
    fillFacts();
    column.add(title);
    column.add(state);
    column.add(facts);
    add(column.scrolling(), BorderLayout.CENTER);
    add(buttons(), BorderLayout.SOUTH);
    Keys.within(this, "control S", model::save);
    Keys.within(this, "control Z", model.form()::undo);
    model.onChange(this::refresh);
    refresh();
  }

  private JComponent buttons() {
    Column foot = new Column(0);
    foot.setBorder(BorderFactory.createEmptyBorder(6, 10, 10, 10));
    foot.add(Row.wrapping(8, save, undo, drop, begin, choose));
    return foot;
  }

  private void fillFacts() {
    text(Field.NAME, "");
    facts.line(Field.MODEL.label(), modelInput.control(), modelInput);
    text(Field.HULL, "");
    text(Field.BUILT, "2016");
    text(Field.LAUNCHED, "20 May 2016, if known");
    text(Field.BOUGHT, "empty if new from the yard");
    facts.line(Field.USE.label(), use.control(), use);
    facts.line(Field.WATER.label(), water.control(), water);
    facts.line(Field.EXPOSURE.label(), exposure.control(), exposure);
    text(Field.SEASON_FROM, "15 April");
    text(Field.SEASON_TO, "15 October");
    text(Field.NOTE, "");
    facts.wide(Text.heading("Fitted"));
    facts.wide(
        Text.quiet("As she is now. What came only after she was built is marked as fitted later."));
    rows = facts.getComponentCount();
  }

  private void text(Field field, String hint) {
    TextInput input = new TextInput(model, field, hint);
    texts.put(field, input);
    facts.line(field.label(), input.control(), input);
  }

  /** Puts the cursor into the first field. */
  void begin() {
    column.scrollRectToVisible(new Rectangle(0, 0, 1, 1));
    texts.get(Field.NAME).control().requestFocusInWindow();
  }

  JComponent region() {
    return column;
  }

  private void refresh() {
    Draft draft = model.form().draft();
    Map<Field, String> problems = model.form().problems();
    title.setText(model.form().original().map(boat -> boat.name()).orElse("A new boat"));
    state.setText(state());
    state.setVisible(!model.form().isNew() || model.form().isChanged());
    texts.forEach(
        (field, input) ->
            input.refresh(
                draft.text(field),
                below(field, problems),
                model.form().clashes().below(field, draft.text(field)).isPresent()));
    modelInput.refresh(models(), draft.text(Field.MODEL), below(Field.MODEL, problems));
    use.refresh(words(Use.values()), draft.text(Field.USE), below(Field.USE, problems));
    water.refresh(words(Water.values()), draft.text(Field.WATER), below(Field.WATER, problems));
    exposure.refresh(
        words(Exposure.values()), draft.text(Field.EXPOSURE), below(Field.EXPOSURE, problems));
    refreshEquipment(draft);
    save.setEnabled(!model.isSaving() && (model.form().isChanged() || model.form().isNew()));
    undo.setEnabled(model.form().canUndo());
    drop.setEnabled(model.form().isChanged() || model.form().isNew());
    begin.setVisible(model.form().isToBegin());
    if (begin.isVisible() && model.isJustEntered()) {
      Later.focus(begin);
    }
    choose.setVisible(model.form().original().isPresent() && !model.isChosenForAll());
    column.revalidate();
    column.repaint();
  }

  private String state() {
    if (model.isSaving()) {
      return "Saving …";
    }
    return model.form().isChanged()
        ? "There are unsaved changes. Save writes them into the file."
        : "Everything is saved.";
  }

  /** What stands below a field: what is wrong with it, or what somebody else has written. */
  private String below(Field field, Map<Field, String> problems) {
    return problems.containsKey(field)
        ? problems.get(field)
        : model.form().clashes().below(field, model.form().draft().text(field)).orElse("");
  }

  private List<Item> models() {
    return model.models().stream().map(page -> new Item(page.id(), page.title())).toList();
  }

  private static List<Item> words(Word[] words) {
    return Arrays.stream(words)
        .map(
            word ->
                new Item(
                    word.word(),
                    Sentences.capital(word.spoken()) + (word instanceof Water ? " water" : "")))
        .toList();
  }

  private void refreshEquipment(Draft draft) {
    List<Equipment> now = model.form().equipment();
    if (!now.equals(shown)) {
      shown = now;
      while (facts.getComponentCount() > rows) {
        facts.remove(facts.getComponentCount() - 1);
      }
      fitted.clear();
      now.forEach(this::addEquipment);
    }
    for (Equipment one : now) {
      ChoiceInput input = fitted.get(one.id());
      if (input != null) {
        List<Item> items = one.choices().stream().map(choice -> item(one, choice)).toList();
        String chosen = draft.equipment().getOrDefault(one.id(), "");
        String title =
            one.choices().stream()
                .filter(choice -> choice.id().equals(chosen))
                .map(Choice::title)
                .findFirst()
                .orElse("");
        input.refresh(
            items, chosen, model.form().clashes().belowFitted(one.id(), title).orElse(""));
      }
    }
  }

  private Item item(Equipment one, Choice choice) {
    String later = model.form().isLater(one, choice) ? ", fitted later" : "";
    return new Item(choice.id(), choice.title() + later);
  }

  private void addEquipment(Equipment one) {
    if (one.choices().size() == 1) {
      JLabel only = new JLabel(one.choices().get(0).title());
      only.setToolTipText("There was no other");
      facts.line(one.title(), only, only);
      only.getAccessibleContext()
          .setAccessibleName(one.title() + ": " + one.choices().get(0).title());
    } else {
      ChoiceInput input =
          new ChoiceInput("fitted-" + one.id(), choice -> model.form().fit(one.id(), choice));
      fitted.put(one.id(), input);
      facts.line(one.title(), input.control(), input);
    }
  }
}
