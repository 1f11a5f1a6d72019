package limberboard.desktop.letters;

import java.util.Optional;
import java.util.function.Consumer;
import limberboard.cases.NextPages.Hint;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Notices;
import limberboard.desktop.read.PlaceTools;
import limberboard.letters.next.NewPage;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;
import limberboard.search.MissedSearches;

/** What can be done with a line of what to write next. For the event thread. */
final class WritingSteps {
  private final WorkspaceFolders folders;
  private final Background writing;
  private final Guard guard;
  private final Notices notices;
  private final Consumer<String> pages;
  private final Consumer<String> letters;

  /**
   * The steps.
   *
   * @param writing writes
   * @param pages opens a page
   * @param letters opens a letter
   */
  WritingSteps(
      WorkspaceFolders folders,
      Background writing,
      Guard guard,
      Notices notices,
      Consumer<String> pages,
      Consumer<String> letters) {
    this.folders = folders;
    this.writing = writing;
    this.guard = guard;
    this.notices = notices;
    this.pages = pages;
    this.letters = letters;
  }

  /** What the place can do. */
  static WritingSteps of(LettersPlace.Outside outside, PlaceTools tools, Consumer<String> letters) {
    return new WritingSteps(
        outside.folders(),
        outside.writing(),
        outside.guard(),
        tools.notices(),
        tools.navigator()::openPage,
        letters);
  }

  void open(String page) {
    pages.accept(page);
  }

  void letter(String name) {
    letters.accept(name);
  }

  /** Begins a page among the symptoms' pages. */
  void begin(Hint hint) {
    writing.run(
        "Beginning a page",
        () -> {
          guard.begins("beginning a page");
          return folders.relative(NewPage.write(folders, hint));
        },
        file ->
            notices.tell(
                "Begun as "
                    + file
                    + ". Write its causes and checks there; until then it counts as unfinished."));
  }

  /** Says whether searches are kept from now on. */
  void keep(boolean kept, Runnable after) {
    searches(searches -> searches.keep(kept), after);
  }

  /** Throws away the searches that are kept. */
  void forget(Runnable after) {
    searches(MissedSearches::forget, after);
  }

  private interface Change {
    Optional<Problem> of(MissedSearches searches);
  }

  private void searches(Change change, Runnable after) {
    writing.run(
        "Changing what is kept of searches",
        () -> {
          guard.begins("changing what is kept of searches");
          return change.of(new MissedSearches(folders));
        },
        wrong -> {
          wrong.ifPresent(problem -> notices.tell(problem.toString()));
          after.run();
        });
  }
}
