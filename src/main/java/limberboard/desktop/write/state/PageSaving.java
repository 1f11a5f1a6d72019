package limberboard.desktop.write.state;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import limberboard.desktop.base.Notices;
import limberboard.writing.PageText;
import limberboard.writing.save.PageFile;
import limberboard.writing.save.SaveOutcome;

/** Saves pages, never over what somebody else has written, and records them. Event thread only. */
public final class PageSaving {
  private final WriteOutside outside;
  private final Notices notices;
  private final PageKeeping keeping;
  private final Set<OpenPage> busy = new HashSet<>();
  private final Set<String> unrecorded = new LinkedHashSet<>();
  private final PageChecks checks;
  private Runnable saved = () -> {};
  private Consumer<Checked> looked = found -> {};
  private Runnable clashed = () -> {};
  private Runnable recording = () -> {};

  PageSaving(WriteOutside outside, Notices notices, PageKeeping keeping, PageChecks checks) {
    this.outside = outside;
    this.checks = checks;
    this.notices = notices;
    this.keeping = keeping;
  }

  /** Says what is done after each writing of a file. */
  public void afterWriting(Runnable action) {
    saved = action;
  }

  /** Says who is told what a page that was saved says, before the workspace has been read again. */
  public void afterLooking(Consumer<Checked> action) {
    looked = action;
  }

  /** Says what shows both versions when a page could not be saved for somebody else's. */
  public void onClash(Runnable action) {
    clashed = action;
  }

  /** Says what asks for the words with which pages are recorded. */
  public void onRecording(Runnable action) {
    recording = action;
  }

  /** Shows both versions, or the text again where both are the same. */
  void clashed() {
    clashed.run();
  }

  /** Whether a page is being saved now. */
  boolean isBusy(OpenPage page) {
    return busy.contains(page);
  }

  /** What came of saving, and whether the workspace has a history. */
  private record Written(SaveOutcome outcome, boolean history) {}

  /** Saves a page. */
  public void save(OpenPage page) {
    save(page, () -> {});
  }

  /** Saves pages one after another, and does something once all are saved. */
  public void saveAll(List<OpenPage> pages, Runnable then) {
    if (pages.isEmpty()) {
      then.run();
    } else {
      save(pages.get(0), () -> saveAll(pages.subList(1, pages.size()), then));
    }
  }

  /**
   * Saves a page, and does something once it is saved.
   *
   * @param then is not done where it could not be saved
   */
  public void save(OpenPage page, Runnable then) {
    if (!page.isChanged()) {
      notices.tell("There is nothing to save.");
      then.run();
      return;
    }
    PageText text = page.text();
    Optional<PageText> before = page.saved();
    PageFile file = new PageFile(outside.folders(), page.path());
    busy.add(page);
    outside
        .library()
        .run(
            "Saving " + page.title(),
            () -> {
              outside.guard().begins("saving a page");
              return new Written(file.save(before, text), outside.record().isThere());
            },
            written -> {
              busy.remove(page);
              took(page, written, then);
            },
            () -> busy.remove(page));
  }

  private void took(OpenPage page, Written written, Runnable then) {
    if (written.outcome() instanceof SaveOutcome.Saved done) {
      page.saved(Optional.of(done.page()));
      keeping.typed(page);
      keeping.flush();
      checks.saved(page, done.page(), looked);
      wrote(List.of(page.path()));
      offer("Saved.", written.history());
      then.run();
    } else if (written.outcome() instanceof SaveOutcome.Changed changed) {
      page.clash(Optional.of(changed));
      clashed.run();
    } else if (written.outcome() instanceof SaveOutcome.Refused refused) {
      notices.warn("Not saved: " + Troubles.of(refused.problem()));
    }
  }

  /** Files were written. */
  void wrote(Collection<String> paths) {
    unrecorded.addAll(paths);
    saved.run();
  }

  /** Tells what was done, and offers to record it where there is a history. */
  void offer(String told, boolean history, Notices.Offer... others) {
    if (!history) {
      notices.tell(told, others);
      return;
    }
    Notices.Offer[] all = Arrays.copyOf(others, others.length + 1);
    all[others.length] = new Notices.Offer("Record it …", recording);
    notices.tell(told, all);
  }

  /** The files written since something was last recorded, relative to the workspace. */
  public List<String> unrecorded() {
    return List.copyOf(unrecorded);
  }

  /** Asks who records here; empty text when nobody is named. */
  public void author(Consumer<String> taken) {
    outside.library().run("Reading the history", () -> outside.record().author().orElse(""), taken);
  }

  /** Records what was written. */
  public void record(String said, String author) {
    List<String> paths = unrecorded();
    outside
        .library()
        .run(
            "Recording",
            () -> {
              outside.guard().begins("recording a page");
              outside.record().record(paths, said, author);
              return true;
            },
            done -> {
              paths.forEach(unrecorded::remove);
              notices.tell("Recorded in the history.");
            });
  }
}
