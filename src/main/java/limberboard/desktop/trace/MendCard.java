package limberboard.desktop.trace;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import limberboard.desktop.base.Place;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.read.CutReader;
import limberboard.print.page.Block;
import limberboard.trace.CautionsRead;
import limberboard.trace.FaultCause;
import limberboard.trace.NextStep;
import limberboard.trace.NextStep.DoMend;
import limberboard.trace.Trace;

/** The mend to try: how sure it is, its page cut to the boat, and whether it helped. */
final class MendCard extends JPanel {
  private final transient TraceModel model;
  private final transient CutReader reader;
  private final Column head = new Column(6);
  private final JButton mended;
  private final JButton notMended;
  private final JButton print;
  private final JButton save;
  private final JButton more;
  private boolean low;
  private boolean headless;
  private final transient OtherSteps others;
  private Optional<FaultCause> cause = Optional.empty();

  MendCard(TraceModel model, CutReader reader) {
    super(new BorderLayout(0, 8));
    this.model = model;
    this.reader = reader;
    this.others = new OtherSteps(model);
    setOpaque(false);
    reader.onCautionsRead(this::read);
    mended = Buttons.main("It is mended", "it-is-mended", () -> model.itIsMended(cause));
    notMended =
        Buttons.plain(
            "It did not help",
            "did-not-help",
            () -> cause.ifPresent(tried -> model.didNotHelp(tried.id())));
    print = Buttons.plain("Print page \u2026", "print-page", reader::print);
    save = Buttons.plain("Save page as PDF \u2026", "save-pdf", reader::savePdf);
    more = Buttons.menu("More", this::openMore);
    more.setName("mend-more");
    more.getAccessibleContext().setAccessibleName("More to do with this mend");
    Column foot = new Column(0).padded(0, 2, 2, 2);
    foot.add(Row.wrapping(10, mended, notMended, others.button(), print, save, more));
    more.setVisible(false);
    add(head, BorderLayout.NORTH);
    add(reader.component(), BorderLayout.CENTER);
    add(foot, BorderLayout.SOUTH);
  }

  /** The page takes the focus, so that keys move it and declare nothing. */
  JComponent first() {
    return reader.pane().region();
  }

  /** Searches in the page. */
  Place.Find find() {
    return reader.pane().finding();
  }

  /**
   * Leaves all the height to the page that can be left to it.
   *
   * @param little whether what is seldom pressed is in a menu
   * @param noHead whether the reason is left to the look at why
   */
  void fit(boolean little, boolean noHead) {
    low = little;
    headless = little || noHead;
    arrange();
  }

  private void arrange() {
    head.setVisible(!headless);
    ((BorderLayout) getLayout()).setVgap(low ? 2 : 8);
    print.setVisible(!low);
    save.setVisible(!low);
    others.button().setVisible(!low && others.isOffered());
    more.setVisible(low);
    revalidate();
  }

  private void openMore() {
    JPopupMenu menu = new JPopupMenu("More");
    if (others.isOffered()) {
      JMenuItem item = new JMenuItem(others.button().getText());
      item.addActionListener(e -> others.open(more));
      menu.add(item);
    }
    menu.add(Buttons.item(print));
    menu.add(Buttons.item(save));
    menu.show(more, 0, more.getHeight());
  }

  /** One of the page's cautions has been read, or, where none is named, all. */
  private void read(String caution) {
    model.read(
        model.step().map(NextStep::cautions).orElse(List.of()).stream()
            .filter(each -> caution.isEmpty() || each.id().equals(caution))
            .toList());
  }

  /** Whether a caution of the page has been read in the trace. */
  private record IsRead(CautionsRead read) implements Predicate<Block.ShortCaution> {
    @Override
    public boolean test(Block.ShortCaution caution) {
      return read.read().contains(new CautionsRead.Read(caution.id(), caution.rule()));
    }
  }

  void show(Trace trace, DoMend step) {
    cause = Optional.of(step.cause());
    head.removeAll();
    head.add(Text.title(step.cause().title()));
    head.add(Text.quiet(step.why()));
    RemarkBox.addTo(head, trace);
    others.offer(trace, step);
    reader.fold(new IsRead(model.read()));
    reader.show(step.cause().mend());
    arrange();
    repaint();
  }
}
