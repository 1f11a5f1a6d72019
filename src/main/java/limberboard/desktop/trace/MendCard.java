package limberboard.desktop.trace;

import java.awt.BorderLayout;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import limberboard.desktop.base.Place;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.read.CutReader;
import limberboard.trace.FaultCause;
import limberboard.trace.NextStep.DoMend;
import limberboard.trace.Trace;

/** The mend to try: how sure it is, its page cut to the boat, and whether it helped. */
final class MendCard extends JPanel {
  private final transient TraceModel model;
  private final transient CutReader reader;
  private final Column head = new Column(6);
  private final JButton mended;
  private final JButton notMended;
  private final transient OtherSteps others;
  private Optional<FaultCause> cause = Optional.empty();

  MendCard(TraceModel model, CutReader reader) {
    super(new BorderLayout(0, 8));
    this.model = model;
    this.reader = reader;
    this.others = new OtherSteps(model);
    setOpaque(false);
    mended = Buttons.main("It is mended", () -> model.itIsMended(cause));
    mended.setName("it-is-mended");
    notMended =
        Buttons.plain(
            "It did not help", () -> cause.ifPresent(tried -> model.didNotHelp(tried.id())));
    notMended.setName("did-not-help");
    JButton print = Buttons.plain("Print page …", reader::print);
    print.setName("print-page");
    JButton save = Buttons.plain("Save page as PDF …", reader::savePdf);
    save.setName("save-pdf");
    Column foot = new Column(0).padded(0, 2, 2, 2);
    foot.add(Row.wrapping(10, mended, notMended, others.button(), print, save));
    add(head, BorderLayout.NORTH);
    add(reader.component(), BorderLayout.CENTER);
    add(foot, BorderLayout.SOUTH);
  }

  JButton first() {
    return mended;
  }

  /** Searches in the page. */
  Place.Find find() {
    return reader.pane().finding();
  }

  void show(Trace trace, DoMend step) {
    cause = Optional.of(step.cause());
    head.removeAll();
    head.add(Text.title(step.cause().title()));
    head.add(Text.quiet(step.why()));
    RemarkBox.addTo(head, trace);
    others.offer(trace, step);
    reader.show(step.cause().mend());
    revalidate();
    repaint();
  }
}
