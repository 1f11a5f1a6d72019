package limberboard.desktop.letters;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.cases.NextPages.Hint;
import limberboard.cases.NextPages.Kind;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Session;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.words.CountWords;
import limberboard.words.Sentences;

/** What to write next: one list with the evidence, each line one step from the page. */
final class NextPagesPanel extends JPanel {
  private static final int READABLE = 860;
  private static final int MOST = 60;
  private static final int MOST_LETTERS = 3;
  private final transient Session session;
  private final transient InboxModel inbox;
  private final transient LetterReading reading;
  private final transient Latest latest;
  private final transient WritingSteps steps;
  private final Column content = new Column(6);
  private final Wrapped told = Text.quiet("");
  private final JButton back;
  private final JButton keep;
  private final JButton forget;
  private transient Optional<NextWork> work = Optional.empty();
  private transient List<String> counted = List.of();

  /**
   * A panel.
   *
   * @param background reads
   * @param steps what can be done with a line
   * @param back goes back to the letters
   */
  NextPagesPanel(
      Session session,
      InboxModel inbox,
      LetterReading reading,
      Background background,
      WritingSteps steps,
      Runnable back) {
    super(new BorderLayout(0, 8));
    this.session = session;
    this.inbox = inbox;
    this.reading = reading;
    this.latest = new Latest(background);
    this.steps = steps;
    this.back = Buttons.plain("Back to the letters", "next-back", back);
    this.keep = Buttons.plain("Keep no searches", "next-keep", this::keep);
    this.forget =
        Buttons.plain(
            "Forget the searches",
            "next-forget",
            "Throws away the searches that are kept",
            () -> steps.forget(this::look));
    setOpaque(false);
    setBorder(BorderFactory.createEmptyBorder(14, 14, 10, 14));
    Column above = new Column(6);
    above.add(Text.title("What to write next"));
    above.add(Row.wrapping(6, this.back, keep, forget));
    above.add(told);
    above.atMost(READABLE);
    add(above, BorderLayout.NORTH);
    content.atMost(READABLE);
    add(content.scrolling(), BorderLayout.CENTER);
    Keys.within(this, "ESCAPE", back);
    session.onChange(this::lookAgain);
    inbox.onChange(this::lookAgain);
  }

  /** Another letter became known, or the workspace was read anew. */
  private void lookAgain() {
    if (isShowing() && inbox.progress().isEmpty() && !inbox.uncovered().equals(counted)) {
      look();
    }
  }

  private void keep() {
    steps.keep(!work.map(NextWork::keeping).orElse(true), this::look);
  }

  /** Looks at everything as it is now. */
  void look() {
    var workspace = session.workspace();
    List<String> uncovered = inbox.uncovered();
    counted = uncovered;
    latest.run(
        "Looking for what to write next", () -> reading.next(workspace, uncovered), this::show);
  }

  private void show(NextWork found) {
    work = Optional.of(found);
    keep.setText(found.keeping() ? "Keep no searches" : "Keep searches");
    forget.setEnabled(found.searches() > 0);
    told.setText(words(found));
    Component focus =
        java.awt.KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    boolean inside = focus != null && content.isAncestorOf(focus);
    content.removeAll();
    int number = 1;
    for (Hint hint : found.hints().subList(0, Math.min(MOST, found.hints().size()))) {
      content.add(Text.strong(number + ". " + Sentences.capital(hint.todo())));
      content.add(Text.quiet(Sentences.capital(hint.evidence()) + "."));
      content.add(Row.wrapping(6, controls(hint, number).toArray(Component[]::new)));
      number++;
    }
    if (found.hints().isEmpty()) {
      content.add(Text.plain("Cases, letters and searches suggest nothing."));
    }
    content.revalidate();
    content.repaint();
    if (inside) {
      back.requestFocusInWindow();
    }
  }

  private String words(NextWork found) {
    String searches =
        found.keeping()
            ? "Searches of no use are kept in a file of this workspace that is never shared ("
                + found.searches()
                + " now)."
            : "No searches are kept.";
    int left = found.hints().size() - MOST;
    return "What weighs most stands first: how many cases, letters or searches speak for it, and"
        + " what one of them counts. "
        + searches
        + (left > 0 ? " " + CountWords.of(left, "smaller thing") + " not shown." : "")
        + (inbox.progress().isEmpty() ? "" : " Letters are still being recognised.");
  }

  private List<JComponent> controls(Hint hint, int number) {
    List<JComponent> all = new ArrayList<>();
    JButton step =
        hint.isNew()
            ? Buttons.plain(
                "Begin the page",
                "next-begin-" + number,
                "Writes its title and what people say for it among the pages",
                () -> steps.begin(hint))
            : Buttons.plain("Open the page", "next-open-" + number, () -> steps.open(hint.page()));
    step.getAccessibleContext().setAccessibleDescription(hint.todo());
    all.add(step);
    if (hint.kind() == Kind.LETTERS) {
      hint.examples().stream()
          .limit(MOST_LETTERS)
          .forEach(name -> all.add(Buttons.link(name, () -> steps.letter(name))));
    }
    return all;
  }

  JComponent first() {
    return back;
  }
}
