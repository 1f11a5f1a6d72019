package limberboard.desktop.workspace.notes;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Observed;
import limberboard.desktop.base.Tried;
import limberboard.notes.NoteFolder;
import limberboard.notes.QuickNote;

/** Quick notes: catching one, those that wait, those that are done. For the event thread only. */
public final class NotesModel extends Observed {
  private final NotesOutside outside;
  private final NoteFolder folder;
  private final Latest reading;
  private Known known = new Known(List.of(), List.of());
  private boolean doneShown;
  private String draft = "";
  private Runnable show = () -> {};

  /** The notes as they were read. */
  private record Known(List<QuickNote> waiting, List<QuickNote> ended) {}

  /** Notes of a workspace. */
  public NotesModel(NotesOutside outside) {
    this.outside = outside;
    this.folder = new NoteFolder(outside.folders());
    this.reading = new Latest(outside.writing());
  }

  /** Says what shows the notes. */
  public void onShow(Runnable action) {
    show = action;
  }

  /** Those that wait, or those that are done. */
  public List<QuickNote> notes() {
    return doneShown ? known.ended() : known.waiting();
  }

  /** How many wait. */
  public int waiting() {
    return known.waiting().size();
  }

  /** Whether those that are done are shown. */
  boolean isDoneShown() {
    return doneShown;
  }

  /** Shows those that are done, or those that wait. */
  public void showDone(boolean done) {
    doneShown = done;
    tell();
  }

  /** What was typed and is in no note yet. */
  public String draft() {
    return draft;
  }

  /** Keeps what was typed until next time. */
  public void draft(String text) {
    draft = text;
  }

  /** What is on the screen. */
  public NoteTies screen() {
    return outside.screen().get();
  }

  /** Reads the notes as they are now. */
  public void look() {
    reading.run("Reading the notes", this::read, this::take);
  }

  private Known read() throws IOException {
    outside.guard().begins("reading the notes");
    return new Known(folder.waiting(), folder.ended());
  }

  private void take(Known now) {
    if (!now.equals(known)) {
      known = now;
      tell();
    }
  }

  /**
   * Keeps a note at once. When that does not work, what was typed is the draft again.
   *
   * @param photo a photo, of which a copy is kept
   */
  public void add(String text, NoteTies ties, Optional<Path> photo) {
    if (text.isBlank() && photo.isEmpty()) {
      return;
    }
    draft = "";
    LocalDateTime now = LocalDateTime.now(outside.clock());
    outside
        .writing()
        .run(
            "Writing the note",
            () -> Tried.of(() -> add(now, text, ties, photo)),
            tried -> tried.told(this::added, wrong -> refused(text, wrong)),
            () -> draft = text);
  }

  private QuickNote add(LocalDateTime now, String text, NoteTies ties, Optional<Path> photo)
      throws IOException {
    outside.guard().begins("writing a note");
    return folder.add(now, ties.page(), ties.boat(), photo, text);
  }

  private void added(QuickNote note) {
    outside.notices().tell("Noted.", new Notices.Offer("Show the notes", show));
    look();
  }

  private void refused(String text, String wrong) {
    draft = text;
    outside.notices().warn("Not noted: " + wrong + " What you wrote stands in the note again.");
  }

  /** Ends a note. */
  public void end(QuickNote note, QuickNote.How how) {
    LocalDate today = LocalDate.now(outside.clock());
    write(
        () -> folder.end(note, today, how),
        how == QuickNote.How.DROPPED ? "Dropped." : "Worked in.");
  }

  /** Lets a note that is done wait again. */
  public void resume(QuickNote note) {
    write(() -> folder.resume(note), "It waits again.");
  }

  /** Something that may fail. */
  private interface Writing {
    void write() throws IOException;
  }

  private void write(Writing what, String done) {
    outside
        .writing()
        .run(
            "Writing the note",
            () ->
                Tried.of(
                    () -> {
                      outside.guard().begins("writing a note");
                      what.write();
                      return done;
                    }),
            tried ->
                tried.told(
                    said -> {
                      outside.notices().tell(said);
                      look();
                    },
                    outside.notices()::warn));
  }

  /** Opens a note's photo in another program. */
  void openPhoto(QuickNote note) {
    outside
        .writing()
        .run(
            "Opening the photo",
            () -> {
              Optional<Path> file = folder.picture(note);
              if (file.isPresent()) {
                outside.opening().open(file.get());
              }
              return file.isPresent();
            },
            opened -> {
              if (!opened) {
                outside.notices().warn("The photo is not there any more.");
              }
            });
  }
}
