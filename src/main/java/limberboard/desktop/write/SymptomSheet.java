package limberboard.desktop.write;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import limberboard.desktop.read.PlaceTools;
import limberboard.desktop.tree.TreePapers;
import limberboard.desktop.write.state.OpenPage;
import limberboard.desktop.write.state.WriteModel;
import limberboard.desktop.write.symptom.SymptomModel;
import limberboard.desktop.write.symptom.SymptomPanel;
import limberboard.desktop.write.symptom.SymptomReading;
import limberboard.desktop.write.symptom.SymptomTools;
import limberboard.library.page.Kind;
import limberboard.writing.PageText;

/** A symptom as a table, in the place of its text. What is filled in changes the text. */
final class SymptomSheet extends Sheet {
  private final transient WriteModel model;
  private final transient SymptomModel symptom;
  private final SymptomPanel panel;
  private transient Optional<OpenPage> shown = Optional.empty();
  private transient Optional<SymptomReading> reading = Optional.empty();

  SymptomSheet(WriteModel model, PlaceTools tools, SymptomTools symptoms, Runnable away) {
    super(away);
    this.model = model;
    symptom = new SymptomModel(symptoms, this::changed);
    panel =
        new SymptomPanel(
            symptom, new TreePapers(tools.session(), tools.papers()), tools.dividers());
    add(panel, BorderLayout.CENTER);
    tools.session().onChange(this::renew);
  }

  private void changed(PageText text) {
    shown.ifPresent(page -> model.replace(page, text.plain()));
  }

  @Override
  void ready() {
    shown = model.current().filter(page -> page.kind() == Kind.SYMPTOM);
    reading = Optional.empty();
    renew();
  }

  /** Goes through the other pages anew. */
  private void renew() {
    shown.ifPresent(
        page ->
            model.reader(
                page,
                made -> {
                  if (shown.equals(Optional.of(page))) {
                    reading = Optional.of(made::read);
                    follow(page);
                  }
                }));
  }

  /** Shows what has become of the text. */
  void follow(OpenPage page) {
    if (shown.equals(Optional.of(page))) {
      reading.ifPresent(with -> symptom.show(page.path(), page.text(), with));
    }
  }

  /** Shows the findings, or the way of the first cause as it would be traced. */
  void look(boolean trying) {
    panel.look(trying);
    if (trying) {
      panel.tryFirst();
    }
  }

  @Override
  JComponent begin() {
    return panel.first();
  }

  @Override
  List<JComponent> regions() {
    return panel.regions();
  }
}
