package limberboard.desktop.write;

import java.util.function.Consumer;
import limberboard.desktop.base.Navigator;
import limberboard.desktop.write.state.OpenPage;
import limberboard.desktop.write.state.WriteModel;
import limberboard.library.page.Kind;

/**
 * What the buttons and keys of the place do.
 *
 * @param model what is written
 * @param navigator the way to where pages are read
 * @param sheets what is asked in the place of the text
 * @param ask asks it
 */
record WriteDeeds(WriteModel model, Navigator navigator, WriteSheets sheets, Consumer<Sheet> ask)
    implements WriteTop.Deeds {
  @Override
  public void save() {
    model.current().ifPresent(model.saving()::save);
  }

  @Override
  public void choose() {
    ask.accept(sheets.pages());
  }

  @Override
  public void begin() {
    ask.accept(sheets.begin());
  }

  private void ofPage(Sheet sheet) {
    if (model.current().isPresent()) {
      ask.accept(sheet);
    }
  }

  @Override
  public void link() {
    ofPage(sheets.link());
  }

  @Override
  public void picture() {
    model.current().ifPresent(model.changes()::putIn);
  }

  @Override
  public void read() {
    model.current().map(OpenPage::id).ifPresent(navigator::openPage);
  }

  @Override
  public void rename() {
    ofPage(sheets.rename());
  }

  @Override
  public void table() {
    if (model.current().filter(page -> page.kind() == Kind.SYMPTOM).isPresent()) {
      ask.accept(sheets.symptom());
    }
  }

  @Override
  public void record() {
    ask.accept(sheets.record());
  }

  @Override
  public void throwAway() {
    model.current().ifPresent(model::throwAway);
  }

  @Override
  public void close() {
    model.current().ifPresent(model::closeSaved);
  }

  @Override
  public void delete() {
    ofPage(sheets.delete());
  }
}
