package limberboard.desktop.pages;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.boat.Fit;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.library.Kind;
import limberboard.library.Page;
import limberboard.library.Problem;

/** What surrounds a page: whether it is for the boat, its problems, links from it and to it. */
final class AroundPanel extends JPanel {
  private final transient PagesModel model;
  private final transient Consumer<String> open;
  private final Column column = new Column(3).padded(14, 8, 14, 14);

  AroundPanel(PagesModel model, Consumer<String> open) {
    super(new BorderLayout());
    this.model = model;
    this.open = open;
    setOpaque(false);
    add(column.scrolling(), BorderLayout.CENTER);
    getAccessibleContext().setAccessibleName("Around this page");
    model.onChange(this::refresh);
    refresh();
  }

  JComponent region() {
    return column;
  }

  private void refresh() {
    column.removeAll();
    if (model.page().isPresent() && !model.problemsShown()) {
      fit();
      problems();
      links("Pages that point here", model.linksTo());
      links("This page points to", model.linksFrom());
    }
    column.revalidate();
    column.repaint();
  }

  private void fit() {
    model
        .fit()
        .ifPresent(
            fit -> {
              String boat = model.boat().map(found -> found.boat().name()).orElse("");
              column.add(Text.heading((fit.fits() ? "For " : "Not for ") + boat));
              column.add(Text.quiet(reason(fit)));
            });
  }

  private static String reason(Fit fit) {
    if (fit.reason().isEmpty()) {
      return "For every boat.";
    }
    String why = fit.reason();
    return why.substring(0, 1).toUpperCase(Locale.ROOT) + why.substring(1) + ".";
  }

  private void problems() {
    List<Problem> problems = model.problemsOfPage();
    if (problems.isEmpty()) {
      return;
    }
    section("Problems in this page");
    for (Problem problem : problems) {
      column.add(Text.plain(ProblemsPanel.line(problem)));
    }
  }

  private void section(String title) {
    Column heading = new Column(0).padded(12, 0, 2, 0);
    heading.add(Text.heading(title));
    column.add(heading);
  }

  private void links(String title, List<Page<?>> pages) {
    section(title);
    if (pages.isEmpty()) {
      column.add(Text.quiet("None."));
    }
    Kind before = null;
    for (Page<?> page : pages) {
      if (page.kind() != before) {
        before = page.kind();
        column.add(Text.caption(Contents.plural(before)));
      }
      JButton link = Buttons.link(page.title(), () -> open.accept(page.id()));
      link.setHorizontalAlignment(JButton.LEFT);
      link.setToolTipText(page.title() + " (" + page.kind().word() + ")");
      column.add(Row.wrapping(0, link));
    }
  }
}
