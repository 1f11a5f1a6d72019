package limberboard.desktop.pages;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.boat.Fit;
import limberboard.desktop.base.Navigator;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.upkeep.WorkNotes;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.library.problem.Problem;
import limberboard.words.Sentences;

/** The boat beside a page: whether it is for her and why, when its work is due, last done. */
final class BoatPanel extends JPanel {
  private final transient PagesModel model;
  private final transient WorkNotes notes;
  private final transient Navigator navigator;
  private final Column column = new Column(3).padded(14, 8, 14, 14);
  private transient Optional<State> shown = Optional.empty();

  BoatPanel(PagesModel model, WorkNotes notes, Navigator navigator) {
    super(new BorderLayout());
    this.model = model;
    this.notes = notes;
    this.navigator = navigator;
    setOpaque(false);
    column.setName("page-boat");
    add(column.scrolling(), BorderLayout.CENTER);
    getAccessibleContext().setAccessibleName("The boat and this page");
    model.onChange(this::refresh);
    notes.onChange(this::refresh);
    refresh();
  }

  JComponent region() {
    return column;
  }

  /** Nothing is made anew when nothing has changed, so that the focus stays where it is. */
  private void refresh() {
    Optional<Page<?>> page = model.problemsShown() ? Optional.empty() : model.page();
    Optional<State> now = page.map(this::state);
    if (!now.equals(shown)) {
      shown = now;
      column.removeAll();
      page.ifPresent(this::fill);
      column.revalidate();
      column.repaint();
    }
  }

  /** All that the panel shows; it is filled anew when some of it is other. */
  private record State(
      String page,
      Optional<String> boat,
      Optional<String> called,
      Optional<Fit> fit,
      List<WorkNotes.Note> due,
      Optional<String> lastDone,
      boolean working,
      List<Problem> problems) {}

  private State state(Page<?> page) {
    return new State(
        page.id(),
        model.boat().map(known -> known.boat().id()),
        model.boat().map(known -> known.boat().name()),
        model.fit(),
        notes.due(page.id()),
        notes.lastDone(page.id()),
        notes.isWorking(),
        model.problemsOfPage());
  }

  private void fill(Page<?> page) {
    if (model.fit().isEmpty()) {
      column.add(Text.heading("No boat chosen"));
      column.add(Text.quiet("Choose one at the top to see whether this page is for her."));
    }
    model.fit().ifPresent(this::fit);
    if (page.kind() == Kind.PROCEDURE && model.boat().isPresent()) {
      work(page);
    }
    problems();
  }

  private void fit(Fit fit) {
    String boat = model.boat().map(found -> found.boat().name()).orElse("");
    column.add(Text.heading((fit.fits() ? "For " : "Not for ") + boat));
    column.add(Text.quiet(reason(fit)));
  }

  private static String reason(Fit fit) {
    if (fit.reason().isEmpty()) {
      return "For every boat.";
    }
    return Sentences.capital(fit.reason()) + ".";
  }

  private void work(Page<?> page) {
    section("When it is due");
    List<WorkNotes.Note> due = notes.due(page.id());
    if (due.isEmpty()) {
      column.add(
          Text.plain(
              notes.isWorking() ? "Working it out …" : "It has no interval: done when needed."));
    }
    for (WorkNotes.Note note : due) {
      column.add(note.now() ? Text.strong(note.state()) : Text.plain(note.state()));
      column.add(Text.plain(note.plan()));
      column.add(Text.quiet(note.why()));
    }
    section("Last done");
    column.add(Text.plain(notes.lastDone(page.id()).orElse("Not in her log.")));
    column.add(Row.wrapping(6, upkeep(page, due.isEmpty())));
  }

  private JButton upkeep(Page<?> page, boolean none) {
    JButton button =
        Buttons.plain(
            none ? "Write it into the log" : "Mark done in Upkeep",
            () -> navigator.logWork(page.id()));
    button.setName("page-upkeep");
    return button;
  }

  private void problems() {
    List<Problem> problems = model.problemsOfPage();
    if (!problems.isEmpty()) {
      section("Problems in this page");
      problems.forEach(problem -> column.add(Text.plain(ProblemsPanel.line(problem))));
    }
  }

  private void section(String title) {
    Column heading = new Column(0).padded(12, 0, 2, 0);
    heading.add(Text.heading(title));
    column.add(heading);
  }
}
