package limberboard.desktop.letters;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Notices;
import limberboard.desktop.parts.Copied;
import limberboard.letters.answer.AnswerDraft;
import limberboard.letters.inbox.LetterState;
import limberboard.letters.inbox.YardAddress;
import limberboard.letters.mail.AnswerId;
import limberboard.letters.mail.LetterHead;
import limberboard.letters.mail.MailWriter;
import limberboard.letters.mail.Mailbox;
import limberboard.letters.mail.OutgoingLetter;
import limberboard.letters.mail.OutgoingLetter.SentFile;
import limberboard.library.file.SafeFiles;
import limberboard.words.CountWords;

/** Where a draft goes: a file that a mail program opens, or another program as text or HTML. */
final class DraftOut {
  private final LetterModel model;
  private final Background background;
  private final Notices notices;
  private final Guard guard;
  private final Clock clock;
  private final LetterOutlets outlets;
  private final LetterPapers papers;

  DraftOut(
      LetterModel model,
      Background background,
      Notices notices,
      Guard guard,
      Clock clock,
      LetterOutlets outlets,
      LetterPapers papers) {
    this.model = model;
    this.background = background;
    this.notices = notices;
    this.guard = guard;
    this.clock = clock;
    this.outlets = outlets;
    this.papers = papers;
  }

  /** To whom the answer goes and under which subject, in words. */
  static String heading(LetterHead head) {
    String to =
        head.replyTo().or(head::from).map(DraftOut::written).orElse("nobody named in the letter");
    return "To " + to + ". " + OutgoingLetter.answered(head.subject());
  }

  /** A name with its address. */
  static String written(Mailbox mailbox) {
    return mailbox.name().isEmpty()
        ? mailbox.address()
        : mailbox.name() + " <" + mailbox.address() + ">";
  }

  /**
   * Asks for a file and saves the draft as a letter that a mail program opens.
   *
   * @param attach whether the pages that it goes by are sent with it
   */
  void save(boolean attach) {
    Optional<OpenLetter> letter = model.letter();
    AnswerDraft draft = model.answer();
    if (letter.isEmpty() || draft.text().isBlank()) {
      notices.tell("There is no answer to save.");
      return;
    }
    model.keepEdits();
    String name = letter.get().name().replaceFirst("\\.[^.]*$", "") + "-answer.eml";
    outlets
        .askFile()
        .apply(name)
        .ifPresent(
            file ->
                background.run(
                    "Saving " + file.getFileName(),
                    () -> save(file, letter.get().understood(), draft, attach),
                    saved -> saved(saved, letter.get().name(), !draft.questions().isEmpty())));
  }

  private record Saved(Path file, YardAddress from, int pages) {}

  private Saved save(Path file, Understanding understood, AnswerDraft draft, boolean attach)
      throws IOException {
    guard.begins("saving a letter");
    LetterHead head = understood.letter().head();
    YardAddress yard = papers.from();
    List<SentFile> pages = attach ? papers.pages(understood, draft.pages()) : List.of();
    OutgoingLetter letter =
        OutgoingLetter.answering(
            head,
            yard.from(),
            OffsetDateTime.now(clock),
            AnswerId.of(head, UUID.randomUUID()),
            draft.text(),
            Copied.document(draft.html()),
            pages);
    SafeFiles.write(file, MailWriter.write(letter));
    return new Saved(file, yard, pages.size());
  }

  /** An answer that asks for something waits for the owner; the other is answered. */
  private void saved(Saved saved, String letter, boolean asks) {
    LetterState next = asks ? LetterState.WAITING : LetterState.ANSWERED;
    notices.tell(
        told(saved), new Notices.Offer("Mark " + next.spoken(), () -> model.state(letter, next)));
  }

  private static String told(Saved saved) {
    String pages =
        saved.pages() == 0 ? "" : " with " + CountWords.of(saved.pages(), "page") + " as PDF";
    String from =
        saved
            .from()
            .problem()
            .map(problem -> " " + problem + ".")
            .orElse(
                saved.from().isSet()
                    ? ""
                    : " Choose there from whom it is: the file letters/from names nobody.");
    return "Saved as " + saved.file() + pages + ". Open it in your mail program to send it." + from;
  }

  /** Copies the draft as plain text. */
  void copyText() {
    String text = model.answer().text();
    copy(() -> outlets.text().accept(text), "The answer is copied as text.");
  }

  /** Copies the draft with its headings and lists. */
  void copyHtml() {
    AnswerDraft draft = model.answer();
    Copied copied = new Copied(draft.text(), Copied.document(draft.html()));
    copy(
        () -> outlets.copied().accept(copied), "The answer is copied with its headings and lists.");
  }

  private void copy(Runnable copying, String told) {
    if (model.answer().text().isBlank()) {
      notices.tell("There is no answer to copy.");
    } else {
      model.keepEdits();
      copying.run();
      notices.tell(told);
    }
  }
}
