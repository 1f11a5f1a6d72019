package limberboard.desktop.letters;

import java.awt.CardLayout;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.TransferHandler;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Place;
import limberboard.desktop.look.LineIcon;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.When;
import limberboard.desktop.read.PlaceTools;
import limberboard.library.file.WorkspaceFolders;

/** The place where owners' letters are read and answered. */
public final class LettersPlace implements Place {
  private static final int ICON = 26;
  private static final int LEAST_WHOLE = 640;
  private static final int LEAST_PAIR = 640;
  private static final String DESK = "desk";
  private static final String NONE = "none";
  private static final String FIGURES = "figures";
  private static final String NEXT = "next";
  private final InboxModel inbox;
  private final LetterModel model;
  private final InboxPanel list;
  private final LetterPanel letter;
  private final RecognisedPanel recognised;
  private final DraftPanel draft;
  private final NoLettersPanel none;
  private final FiguresPanel figures;
  private final NextPagesPanel next;
  private final Sides pair;
  private final Sides whole;
  private final CardLayout cards = new CardLayout();
  private final JPanel panel = new JPanel(cards);
  private final Consumer<List<Path>> dropped;
  private boolean empty;
  private Optional<JComponent> aside = Optional.empty();
  private Optional<String> shown = Optional.empty();
  private Runnable changed = () -> {};

  /**
   * What the place touches outside the window.
   *
   * @param folders where letters lie
   * @param notes keeps what is noted of letters
   * @param letters reads, recognises and drafts, off the event thread
   * @param writing writes, off the event thread
   * @param guard is told of work that must not run on the event thread
   * @param clock says what time it is
   * @param outlets the ways in and out
   */
  public record Outside(
      WorkspaceFolders folders,
      LetterNotes notes,
      Background letters,
      Background writing,
      Guard guard,
      Clock clock,
      LetterOutlets outlets) {}

  /** The place. */
  public LettersPlace(PlaceTools tools, Outside outside) {
    LetterReading reading = new LetterReading(outside.folders(), outside.notes(), outside.guard());
    inbox = new InboxModel(tools.session(), outside.letters(), reading);
    model =
        new LetterModel(
            tools.session(), inbox, reading, outside.letters(), outside.writing(), tools.notices());
    Arrivals arrivals =
        new Arrivals(tools.session(), inbox, reading, outside.writing(), tools.notices());
    LetterOutlets outlets = outside.outlets();
    Runnable files = () -> arrivals.files(outlets.askFiles().get());
    Runnable paste = () -> arrivals.text(outlets.pasted().get());
    list =
        new InboxPanel(
            inbox, files, paste, this::read, this::clicked, this::showFigures, this::showNext);
    letter =
        new LetterPanel(
            model, new Attachments(reading, outside.letters(), tools.notices(), outlets));
    recognised = new RecognisedPanel(model, TraceOfLetter.by(tools.navigator()));
    draft =
        new DraftPanel(
            model,
            new DraftOut(
                model,
                outside.writing(),
                tools.notices(),
                outside.guard(),
                outside.clock(),
                outlets,
                new LetterPapers(outside.folders(), tools.renderer()::paper)));
    figures = new FiguresPanel(tools.session(), outside.letters(), this::showLetters);
    next =
        new NextPagesPanel(
            tools.session(),
            inbox,
            reading,
            outside.letters(),
            WritingSteps.of(outside, tools, this::open),
            this::showLetters);
    none = new NoLettersPanel(reading.place(), files, paste);
    LetterAndSeen about = new LetterAndSeen(letter, recognised, tools.dividers());
    pair =
        new Sides(
            LEAST_PAIR, "Letter", about, "Answer", draft, "letters-answer", 0.5, tools.dividers());
    whole =
        new Sides(
            LEAST_WHOLE,
            "Inbox",
            list,
            "Letter and answer",
            pair,
            "letters-inbox",
            0.29,
            tools.dividers());
    panel.add(whole, DESK);
    panel.add(none, NONE);
    panel.add(figures, FIGURES);
    panel.add(next, NEXT);
    dropped = arrivals::files;
    When.showing(panel, this::look);
    inbox.onChange(this::refresh);
    refresh();
  }

  /** Looks into the folder each time that the place is gone to. */
  private void look() {
    if (panel.isShowing()) {
      inbox.look();
    }
  }

  /** Looks into the folder again where it has been looked into. */
  public void lookAgain() {
    inbox.lookAgain();
  }

  /**
   * Takes letters that are dropped anywhere on the window.
   *
   * @param go shows this place
   */
  public TransferHandler dropping(Runnable go) {
    return new LetterDrop(
        files -> {
          go.run();
          dropped.accept(files);
        });
  }

  /** Opens a letter by its file's name, and brings it to the front. */
  public void open(String name) {
    inbox.look();
    inbox.choose(name);
    aside = Optional.empty();
    cards.show(panel, empty ? NONE : DESK);
    whole.showOther();
    pair.showMain();
  }

  /** Brings the draft to the front. */
  public void showAnswer() {
    whole.showOther();
    pair.showOther();
  }

  /** Shows what recorded cases add up to. */
  public void showFigures() {
    figures.count();
    aside(FIGURES, figures.first());
  }

  /** Shows what to write next. */
  public void showNext() {
    inbox.look();
    next.look();
    aside(NEXT, next.first());
  }

  private void aside(String card, JComponent first) {
    aside = Optional.of(first);
    cards.show(panel, card);
    first.requestFocusInWindow();
  }

  private void showLetters() {
    aside = Optional.empty();
    cards.show(panel, empty ? NONE : DESK);
    begin().requestFocusInWindow();
  }

  /** In a small window a click on a letter brings it to the front. */
  private void clicked() {
    if (whole.isNarrow()) {
      read();
    }
  }

  private void refresh() {
    if (inbox.isEmpty() != empty) {
      empty = inbox.isEmpty();
      aside = Optional.empty();
      cards.show(panel, empty ? NONE : DESK);
      if (panel.isShowing()) {
        Later.focus(begin());
      }
    }
    if (!inbox.chosen().equals(shown)) {
      shown = inbox.chosen();
      changed.run();
    }
  }

  /** Goes to the letter that is open. */
  private void read() {
    whole.showOther();
    pair.showMain();
    letter.first().requestFocusInWindow();
  }

  @Override
  public Name name() {
    return new Name("letters", "Letters", 'E');
  }

  @Override
  public Icon icon() {
    return LineIcon.letters(ICON);
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public JComponent begin() {
    if (aside.isPresent()) {
      return aside.get();
    }
    return inbox.isEmpty() ? none.first() : list.letters();
  }

  @Override
  public Optional<String> subject() {
    return shown.map(name -> "Letter: " + name);
  }

  @Override
  public void onSubject(Runnable listener) {
    changed = listener;
  }

  @Override
  public List<JComponent> regions() {
    if (aside.isPresent()) {
      return List.of(aside.get());
    }
    return inbox.isEmpty()
        ? none.regions()
        : List.of(
            KeyboardRegion.of(list, list.letters()),
            KeyboardRegion.of(letter, letter.first()),
            KeyboardRegion.of(recognised, recognised.first()),
            KeyboardRegion.of(draft, draft.first()));
  }

  @Override
  public Optional<Find> find() {
    return Optional.of(
        new Find() {
          @Override
          public void begin() {
            whole.showMain();
            list.find();
          }

          @Override
          public void next(boolean forward) {
            list.next(forward);
          }
        });
  }

  /** What has been edited is noted first; the writing is waited for when the window is closed. */
  @Override
  public boolean mayClose() {
    model.keepEdits();
    return true;
  }
}
