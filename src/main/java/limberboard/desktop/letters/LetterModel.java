package limberboard.desktop.letters;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.UnaryOperator;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Observed;
import limberboard.desktop.base.Session;
import limberboard.letters.answer.AnswerDraft;
import limberboard.letters.answer.DraftBlock;
import limberboard.letters.inbox.KeptEdit;
import limberboard.letters.inbox.LetterNote;
import limberboard.letters.inbox.LetterSaid;
import limberboard.letters.inbox.LetterState;
import limberboard.library.file.FileTrouble;
import limberboard.library.problem.Problem;

/**
 * The letter that is open: how it is understood, what a person says otherwise, and the draft of its
 * answer. Each change is noted beside the letter, and redrafts what nobody has touched. For the
 * event thread only.
 */
final class LetterModel extends Observed {
  private static final AnswerDraft NO_DRAFT = new AnswerDraft(List.of(), List.of());
  private final Session session;
  private final InboxModel inbox;
  private final LetterReading reading;
  private final Background writing;
  private final Notices notices;
  private final Latest opening;
  private final Latest drafting;
  private final AtomicLong wanted = new AtomicLong();
  private Optional<OpenLetter> open = Optional.empty();
  private Optional<String> name = Optional.empty();
  private String trouble = "";
  private AnswerDraft draft = NO_DRAFT;
  private boolean drafted;
  private boolean unkept;
  private int unwritten;
  private Workspace workspace;
  private LocalDate day;

  /**
   * A model without a letter.
   *
   * @param letters reads, recognises and drafts
   * @param writing writes what is noted
   */
  LetterModel(
      Session session,
      InboxModel inbox,
      LetterReading reading,
      Background letters,
      Background writing,
      Notices notices) {
    this.session = session;
    this.inbox = inbox;
    this.reading = reading;
    this.writing = writing;
    this.notices = notices;
    this.opening = new Latest(letters);
    this.drafting = new Latest(letters);
    this.workspace = session.workspace();
    this.day = session.today();
    inbox.onChange(this::follow);
    session.onChange(this::sessionChanged);
  }

  private void follow() {
    if (!inbox.chosen().equals(name)) {
      keepEdits();
      name = inbox.chosen();
      forget();
      read();
    }
  }

  private void forget() {
    open = Optional.empty();
    draft = NO_DRAFT;
    drafted = false;
    trouble = "";
    drafting.drop();
    tell();
  }

  /** Another boat in the strip changes nothing here. */
  private void sessionChanged() {
    if (session.workspace() != workspace || !session.today().equals(day)) {
      workspace = session.workspace();
      day = session.today();
      keepEdits();
      read();
    }
  }

  /** Reads the letter; one that is no longer wanted when its turn comes is passed over. */
  private void read() {
    if (name.isEmpty() || !session.isRead()) {
      return;
    }
    String file = name.get();
    long mine = wanted.incrementAndGet();
    Workspace from = workspace;
    LocalDate on = day;
    opening.run(
        "Reading the letter",
        () -> mine == wanted.get() ? read(file, from, on) : new Read(Optional.empty(), ""),
        this::take);
  }

  private record Read(Optional<OpenLetter> letter, String trouble) {}

  private Read read(String file, Workspace from, LocalDate on) {
    try {
      return new Read(Optional.of(reading.open(file, from, on)), "");
    } catch (IOException e) {
      return new Read(
          Optional.empty(), "This letter cannot be read: " + FileTrouble.reason(e) + ".");
    }
  }

  private void take(Read read) {
    trouble = read.trouble();
    read.letter().ifPresentOrElse(this::take, this::tell);
  }

  /** What is noted and not yet written counts more than what its file says. */
  private void take(OpenLetter letter) {
    boolean newer = unwritten > 0 && open.filter(o -> o.name().equals(letter.name())).isPresent();
    open = Optional.of(newer ? letter.noting(open.get().note()) : letter);
    trouble = letter.trouble().orElse("");
    draft();
  }

  /** Drafts the answer anew; what a person has edited stays. */
  private void draft() {
    OpenLetter letter = open.orElseThrow();
    Understanding understood = letter.understood();
    inbox.understood(letter.name(), understood);
    drafting.run(
        "Drafting the answer",
        () -> reading.draft(understood),
        fresh -> {
          draft = drafted ? draft.redrafted(fresh) : KeptEdit.in(fresh, letter.note().edits());
          drafted = true;
          tell();
        });
    tell();
  }

  /** The letter that is open; empty while it is being read. */
  Optional<OpenLetter> letter() {
    return open;
  }

  /** Whether a letter is chosen, be it still being read. */
  boolean isChosen() {
    return name.isPresent();
  }

  /** What is wrong with it or with what is noted of it; empty when nothing is. */
  String trouble() {
    return trouble;
  }

  /** The draft; empty while there is none. */
  AnswerDraft answer() {
    return draft;
  }

  /** Whether a draft has been made. */
  boolean isDrafted() {
    return drafted;
  }

  /** Says that the letter is about another boat; empty for the one that was seen. */
  void boat(Optional<String> id) {
    say(said -> said.of(id));
  }

  /** Says what kind of answer it gets. */
  void about(AnswerAs kind) {
    say(said -> said.answeredAs(Optional.of(kind.written())));
  }

  /** Says that it tells of a symptom, or does not. */
  void symptom(String id, boolean tells) {
    List<String> ids =
        new ArrayList<>(open.map(letter -> letter.understood().chosen()).orElse(List.of()));
    ids.remove(id);
    ids.addAll(tells ? List.of(id) : List.of());
    say(said -> said.telling(ids).answeredAs(Optional.empty()));
  }

  /** Says what is dangerous now; empty for nothing. */
  void urgent(Optional<String> danger) {
    say(said -> said.dangers(Optional.of(danger.stream().toList())));
  }

  /**
   * Says what the letter's answer to a check is: one of its answers, or that of {@link LetterSaid}.
   */
  void answer(String symptom, String check, String answer) {
    say(said -> said.answering(symptom, check, Optional.of(answer)));
  }

  private void say(UnaryOperator<LetterSaid> change) {
    note(note -> note.saying(change.apply(note.said())));
    open.ifPresent(letter -> draft());
  }

  /** Says how far the letter has come. */
  void state(LetterState state) {
    LocalDate today = session.today();
    note(note -> note.in(state, today));
    tell();
  }

  /** The same of a letter, as long as it is the one that is open. */
  void state(String letter, LetterState state) {
    if (open.filter(now -> now.name().equals(letter)).isPresent()) {
      state(state);
    }
  }

  /** Notes something at once, and writes it in the background. */
  private void note(UnaryOperator<LetterNote> change) {
    open.ifPresent(
        letter -> {
          OpenLetter now = letter.noting(change.apply(letter.note()));
          open = Optional.of(now);
          inbox.noted(now.name(), now.note());
          unwritten++;
          writing.run(
              "Writing what is noted of the letter",
              () -> reading.change(now.name(), change),
              this::written,
              () -> unwritten--);
        });
  }

  private void written(Optional<Problem> wrong) {
    unwritten--;
    wrong.ifPresent(problem -> notices.warn("Not noted: " + problem + "."));
  }

  /** Puts a person's text in the place of a piece. */
  void edit(String piece, String text) {
    change(piece, now -> now.edited(piece, text));
  }

  /** Takes what a person has put in the place of a piece back. */
  void asWritten(String piece) {
    change(piece, now -> now.asWritten(piece));
    keepEdits();
  }

  private void change(String piece, UnaryOperator<AnswerDraft> change) {
    if (draft.block(piece).isPresent()) {
      AnswerDraft next = change.apply(draft);
      if (!next.equals(draft)) {
        draft = withoutGone(next);
        unkept = true;
        tell();
      }
    }
  }

  /** A piece that the program would not write any more goes when its edit is taken back. */
  private static AnswerDraft withoutGone(AnswerDraft draft) {
    List<DraftBlock> left =
        draft.blocks().stream()
            .filter(block -> block.isEdited() || !block.written().isEmpty())
            .toList();
    return new AnswerDraft(left, draft.questions(), draft.pages());
  }

  /** Notes what has been edited; called when a piece is left and when the window is closed. */
  void keepEdits() {
    if (unkept) {
      unkept = false;
      List<KeptEdit> edits = KeptEdit.of(draft);
      note(note -> note.editing(edits));
    }
  }
}
