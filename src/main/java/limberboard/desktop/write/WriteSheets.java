package limberboard.desktop.write;

import limberboard.desktop.parts.Divider;
import limberboard.desktop.read.PlaceTools;
import limberboard.desktop.write.complete.CompletionFinder;
import limberboard.desktop.write.state.OpenPage;
import limberboard.desktop.write.state.WriteModel;
import limberboard.desktop.write.symptom.SymptomTools;
import limberboard.library.page.Page;

/** What is asked in the place of the text. */
final class WriteSheets {
  private final WriteModel model;
  private final Runnable away;
  private final ChooseSheet pages;
  private final ChooseSheet link;
  private final BeginSheet begin;
  private final RenameSheet rename;
  private final DeleteSheet delete;
  private final RecordSheet record;
  private final BothSheet both;
  private final SymptomSheet symptom;
  private final AnswerSheet answer;

  WriteSheets(WriteModel model, PlaceTools tools, SymptomTools symptoms, Runnable away) {
    Divider.Memory dividers = tools.dividers();
    this.model = model;
    this.away = away;
    pages =
        new ChooseSheet(
            "Open a page for writing",
            "From any page that is read, F4 opens it here. Ctrl+Shift+N begins a new one.",
            words -> PageChoice.all(model, words),
            this::open,
            away);
    link =
        new ChooseSheet(
            "Put in a link to a page",
            "It stands where the caret is, with the page's title as its words.",
            words -> PageChoice.pages(model, words),
            this::link,
            away);
    begin = new BeginSheet(model, model::begin, away);
    rename = new RenameSheet(model, away);
    delete = new DeleteSheet(model, away);
    record = new RecordSheet(model, away);
    both = new BothSheet(model, dividers, away);
    answer = new AnswerSheet(model, away);
    symptom = new SymptomSheet(model, tools, symptoms, away);
  }

  private void open(PageChoice choice) {
    if (choice instanceof PageChoice.Left left) {
      model.restore(left.offered());
    } else if (choice instanceof PageChoice.Open open) {
      model.show(open.page());
      away.run();
    } else if (choice instanceof PageChoice.Broken broken) {
      model.openFile(broken.path(), broken.kind());
    } else if (choice instanceof PageChoice.OfLibrary found) {
      boolean open = model.current().filter(now -> now.id().equals(found.page().id())).isPresent();
      model.open(found.page().id());
      if (open) {
        away.run();
      }
    }
  }

  private void link(PageChoice choice) {
    if (choice instanceof PageChoice.OfLibrary found) {
      model.current().ifPresent(page -> link(page, found.page()));
    }
    away.run();
  }

  private void link(OpenPage page, Page<?> to) {
    CompletionFinder finder = new CompletionFinder(model.library(), page.kind(), page.path());
    model.changes().insert(page, page.caret(), page.caret(), finder.whole(to));
  }

  /** What can be opened has changed. */
  void refresh() {
    pages.refresh();
    link.refresh();
    begin.refresh();
  }

  ChooseSheet pages() {
    return pages;
  }

  ChooseSheet link() {
    return link;
  }

  BeginSheet begin() {
    return begin;
  }

  RenameSheet rename() {
    return rename;
  }

  DeleteSheet delete() {
    return delete;
  }

  RecordSheet record() {
    return record;
  }

  AnswerSheet answer() {
    return answer;
  }

  SymptomSheet symptom() {
    return symptom;
  }

  BothSheet both() {
    return both;
  }
}
