package limberboard.desktop.letters;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Guard;
import limberboard.letters.answer.AnswerDraft;
import limberboard.letters.answer.Drafter;
import limberboard.letters.inbox.LetterFile;
import limberboard.letters.inbox.LetterFolder;
import limberboard.letters.inbox.LetterNote;
import limberboard.letters.mail.Letter;
import limberboard.letters.mail.LetterHead;
import limberboard.letters.recognise.Recogniser;
import limberboard.letters.recognise.Recognition;
import limberboard.letters.recognise.Teaching;
import limberboard.library.file.FileTrouble;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;

/**
 * What takes time about letters: reading, recognising, drafting. For the thread of letters; what
 * was learnt from a workspace is kept for as long as that stays the same.
 */
final class LetterReading {
  private static final InboxRow.Summary UNKNOWN = new InboxRow.Summary("", "", "Not known", false);
  private static final LetterFolder.Noted NOTHING =
      new LetterFolder.Noted(LetterNote.NEW, Optional.empty());
  private final WorkspaceFolders folders;
  private final LetterFolder folder;
  private final LetterNotes notes;
  private final Guard guard;
  private Optional<Learnt> learnt = Optional.empty();

  private record Learnt(Workspace workspace, LocalDate day, Teaching teaching) {}

  LetterReading(WorkspaceFolders folders, LetterNotes notes, Guard guard) {
    this.folders = folders;
    this.notes = notes;
    this.folder = new LetterFolder(folders);
    this.guard = guard;
  }

  /** Puts a letter into the folder, see {@link LetterFolder#add}. */
  String add(String suggested, byte[] bytes) throws IOException {
    guard.begins("writing a letter");
    return folder.add(suggested, bytes);
  }

  /** Changes what is noted of a letter, see {@link LetterNotes#change}. */
  Optional<Problem> change(String name, UnaryOperator<LetterNote> change) {
    guard.begins("writing what is noted of a letter");
    return notes.change(name, change);
  }

  /** What an attachment holds, see {@link LetterFolder#attachment}. */
  Optional<byte[]> attachment(String name, int number, int most) throws IOException {
    guard.begins("reading an attachment");
    return folder.attachment(name, number, most);
  }

  /** Where letters lie, as a person finds it. */
  String place() {
    return folders.relative(folders.letters());
  }

  List<LetterFile> list() throws IOException {
    guard.begins("listing letters");
    return folder.list();
  }

  /** Reads a letter's head and what is noted of it. */
  InboxRow head(InboxRow row) {
    guard.begins("reading a letter's head");
    LetterFolder.Noted noted = row.file().noted().isPresent() ? folder.note(row.name()) : NOTHING;
    Optional<String> wrong = noted.problem().map(LetterReading::words);
    try {
      return row.with(folder.head(row.name()), noted.note(), wrong);
    } catch (IOException e) {
      return row.with(LetterHead.NONE, noted.note(), Optional.of(unread(e)));
    }
  }

  private static String unread(IOException e) {
    return "It cannot be read: " + FileTrouble.reason(e) + ".";
  }

  private static String words(Problem problem) {
    return "What is noted of it cannot be used: " + problem + ".";
  }

  /** Says what a letter is about; whatever is wrong with it is said at its row. */
  InboxRow summary(InboxRow row, Workspace workspace, LocalDate day) throws IOException {
    Teaching teaching = teaching(workspace, day);
    try {
      OpenLetter open = open(row.name(), workspace, day, teaching);
      return row.noting(open.note()).with(SummaryWords.of(open.understood()));
    } catch (IOException e) {
      return row.troubled(unread(e)).with(UNKNOWN);
    } catch (RuntimeException e) {
      return row.troubled("It could not be recognised; open it and read it.").with(UNKNOWN);
    }
  }

  /** Reads and recognises a letter. */
  OpenLetter open(String name, Workspace workspace, LocalDate day) throws IOException {
    return open(name, workspace, day, teaching(workspace, day));
  }

  private OpenLetter open(String name, Workspace workspace, LocalDate day, Teaching teaching)
      throws IOException {
    guard.begins("recognising a letter");
    Letter letter = folder.read(name);
    Recogniser recogniser = teaching.recogniser();
    Recognition seen = recogniser.recognise(letter);
    LetterFolder.Noted noted = folder.note(name);
    return new OpenLetter(
        name,
        new Understanding(
            workspace, day, letter, seen, recogniser.fitting(seen), noted.note().said()),
        noted.note(),
        noted.problem().map(LetterReading::words));
  }

  /**
   * What to write next.
   *
   * @param uncovered names of letters that tell of a fault that no page covers
   */
  NextWork next(Workspace workspace, List<String> uncovered) throws IOException {
    guard.begins("looking for what to write next");
    return NextWork.of(folders, workspace, uncovered);
  }

  /** Drafts the answer. */
  AnswerDraft draft(Understanding understood) {
    guard.begins("drafting an answer");
    return new Drafter(understood.workspace().library()).draft(understood.toAnswer());
  }

  private synchronized Teaching teaching(Workspace workspace, LocalDate day) throws IOException {
    if (learnt.filter(l -> l.workspace() == workspace && l.day().equals(day)).isEmpty()) {
      guard.begins("learning from letters");
      learnt = Optional.of(new Learnt(workspace, day, new Teaching(folders, workspace, day)));
    }
    return learnt.get().teaching();
  }
}
