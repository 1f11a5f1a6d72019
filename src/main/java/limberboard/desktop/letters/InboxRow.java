package limberboard.desktop.letters;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import limberboard.letters.inbox.LetterFile;
import limberboard.letters.inbox.LetterNote;
import limberboard.letters.inbox.LetterState;
import limberboard.letters.mail.LetterHead;
import limberboard.letters.mail.Mailbox;
import limberboard.words.DayText;
import limberboard.words.Sentences;

/**
 * A letter in the inbox, as far as it has been looked at. Immutable.
 *
 * @param file its file
 * @param head what its head says; empty before that was read
 * @param note what is noted of it
 * @param summary what it is about; empty before that was recognised
 * @param trouble what is wrong with it or with what is noted of it
 */
record InboxRow(
    LetterFile file,
    Optional<LetterHead> head,
    LetterNote note,
    Optional<Summary> summary,
    Optional<String> trouble) {

  /**
   * What a letter is about, in words.
   *
   * @param urgent what is dangerous now, or empty
   * @param boat the boat, or empty
   * @param about what it is about
   * @param uncovered whether it tells of a fault that no page covers
   */
  record Summary(String urgent, String boat, String about, boolean uncovered) {
    /** Boat and matter in one line. */
    String line() {
      return boat.isEmpty() ? about : boat + ": " + about;
    }
  }

  /** A letter of which only its file is known. */
  static InboxRow of(LetterFile file) {
    return new InboxRow(file, Optional.empty(), LetterNote.NEW, Optional.empty(), Optional.empty());
  }

  InboxRow with(LetterHead read, LetterNote noted, Optional<String> wrong) {
    return new InboxRow(file, Optional.of(read), noted, summary, wrong);
  }

  InboxRow with(Summary told) {
    return new InboxRow(file, head, note, Optional.of(told), trouble);
  }

  InboxRow noting(LetterNote noted) {
    return new InboxRow(file, head, noted, summary, trouble);
  }

  InboxRow unrecognised() {
    return new InboxRow(file, head, note, Optional.empty(), trouble);
  }

  InboxRow troubled(String wrong) {
    return new InboxRow(file, head, note, summary, Optional.of(wrong));
  }

  String name() {
    return file.name();
  }

  LetterState state() {
    return note.state();
  }

  /** Whether it is urgent and not yet answered. */
  boolean isUrgent() {
    return state().isOpen() && summary.filter(told -> !told.urgent().isEmpty()).isPresent();
  }

  /** When it was written; when its file was, where the letter does not say. */
  OffsetDateTime when() {
    return head.flatMap(LetterHead::date).orElseGet(() -> file.changed().atOffset(ZoneOffset.UTC));
  }

  /** Who wrote it. */
  String who() {
    if (head.isEmpty()) {
      return file.name();
    }
    return head.flatMap(LetterHead::from)
        .map(Mailbox::shown)
        .filter(shown -> !shown.isBlank())
        .orElse("Nobody named");
  }

  /** The day it was written, in words. */
  String day() {
    LocalDate day = when().toLocalDate();
    return DayText.written(day);
  }

  /** What it is about: what was recognised, its subject before that. */
  String about() {
    return summary.map(Summary::line).orElseGet(() -> "Not looked at yet");
  }

  /** Its subject, or its file's name where it has none. */
  String subject() {
    return head.map(LetterHead::subject).filter(text -> !text.isBlank()).orElse(file.name());
  }

  /** The state in words. */
  String stateWord() {
    return Sentences.capital(state().spoken());
  }

  /** What is wrong with it, if anything is; otherwise its day and its subject. */
  String line() {
    return trouble.orElseGet(() -> day() + ". " + subject());
  }

  /** Everything as one sentence, for somebody who listens to it. */
  String spoken() {
    String urgent = isUrgent() ? "Urgent: " + summary.orElseThrow().urgent() + ". " : "";
    return urgent
        + who()
        + ", "
        + day()
        + ". "
        + about()
        + ". "
        + stateWord()
        + ". "
        + trouble.orElse(subject());
  }

  /** Whether it has these words, in small letters, in what is known of it. */
  boolean has(String words) {
    return words.isEmpty()
        || (who() + " " + subject() + " " + about() + " " + name())
            .toLowerCase(Locale.ROOT)
            .contains(words);
  }
}
