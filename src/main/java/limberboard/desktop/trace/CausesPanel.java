package limberboard.desktop.trace;

import java.awt.BorderLayout;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.trace.RankedCause;
import limberboard.trace.Trace;

/** The causes by falling chance, each with a bar, its chance in words and per cent. */
final class CausesPanel extends JPanel {
  private static final double UNLIKELY = 0.02;
  private static final int LEAST_ROWS = 3;
  private final transient TraceModel model;
  private final transient Consumer<String> openPage;
  private final Column column = new Column(10).padded(2, 2, 8, 10);
  private final Set<String> open = new HashSet<>();
  private boolean all;
  private transient Optional<Trace> shown = Optional.empty();

  CausesPanel(TraceModel model, Consumer<String> openPage) {
    super(new BorderLayout(0, 6));
    this.model = model;
    this.openPage = openPage;
    setOpaque(false);
    Column head = new Column(0);
    head.add(Text.heading("Likeliest causes"));
    add(head, BorderLayout.NORTH);
    JScrollPane scroller = column.scrolling();
    add(scroller, BorderLayout.CENTER);
    getAccessibleContext().setAccessibleName("Likeliest causes");
    model.onChange(this::follow);
    refresh();
  }

  /** As long as the trace is equal, everything stays as it is, and so does the focus in it. */
  private void follow() {
    if (!model.trace().equals(shown)) {
      refresh();
    }
  }

  private void refresh() {
    shown = model.trace();
    column.removeAll();
    model.trace().ifPresent(this::fill);
    column.revalidate();
    column.repaint();
  }

  private void fill(Trace trace) {
    List<RankedCause> ranking = trace.ranking();
    column.add(Text.quiet("Before any answer: " + trace.fault().chancesFrom() + "."));
    long shown = all ? ranking.size() : ranking.stream().filter(CausesPanel::counts).count();
    int rows = (int) Math.min(ranking.size(), Math.max(LEAST_ROWS, shown));
    ranking.subList(0, rows).forEach(ranked -> column.add(row(ranked)));
    if (rows < ranking.size() || all) {
      String words = all ? "Hide the unlikely ones" : (ranking.size() - rows) + " unlikely ones";
      JButton more = Buttons.link(words, this::toggleAll);
      more.setName("unlikely");
      column.add(Row.wrapping(0, more));
    }
  }

  private static boolean counts(RankedCause ranked) {
    return ranked.chance() >= UNLIKELY;
  }

  private CauseRow row(RankedCause ranked) {
    String id = ranked.cause().id();
    return new CauseRow(
        ranked, open.contains(id), () -> toggle(id), () -> openPage.accept(ranked.cause().mend()));
  }

  private void toggleAll() {
    all = !all;
    refresh();
  }

  private void toggle(String id) {
    if (!open.remove(id)) {
      open.add(id);
    }
    refresh();
  }
}
