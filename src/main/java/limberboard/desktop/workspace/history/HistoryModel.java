package limberboard.desktop.workspace.history;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Optional;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Observed;
import limberboard.desktop.base.Tried;
import limberboard.desktop.workspace.history.PageVersions.Entry;
import limberboard.history.Author;
import limberboard.history.Beginning;
import limberboard.history.HistoryFolder;
import limberboard.history.PageHistory;
import limberboard.history.Restorer;
import limberboard.history.Version;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.print.page.CutPage;
import limberboard.words.CountWords;
import limberboard.words.DayText;

/** The history of a page, without Swing. For the event thread only. */
public final class HistoryModel extends Observed {
  private final HistoryOutside outside;
  private final Latest reading;
  private final Latest sheets;
  private Optional<String> page = Optional.empty();
  private HistoryStage stage = HistoryStage.NONE;
  private Optional<PageVersions> versions = Optional.empty();
  private Optional<Entry> chosen = Optional.empty();
  private VersionLook look = VersionLook.CHANGED;
  private Optional<CutPage> sheet = Optional.empty();
  private String trouble = "";
  private Runnable begun = () -> {};

  /** A model without a page. */
  public HistoryModel(HistoryOutside outside) {
    this.outside = outside;
    this.reading = new Latest(outside.background());
    this.sheets = new Latest(outside.background());
  }

  /** Says what happens once a history has been begun. */
  public void onBegun(Runnable action) {
    begun = action;
  }

  /** How far it is. */
  public HistoryStage stage() {
    return stage;
  }

  /** Whose history it is: the page's id. */
  public Optional<String> page() {
    return page;
  }

  /** Its title now, or its id where the library has it no more. */
  String title() {
    return page.map(id -> outside.session().library().page(id).map(Page::title).orElse(id))
        .orElse("");
  }

  /** What is wrong and what would be right; empty while nothing is. */
  public String trouble() {
    return trouble;
  }

  /** The versions, once they are read. */
  Optional<PageVersions> versions() {
    return versions;
  }

  /** The version that is looked at. */
  Optional<Entry> chosen() {
    return chosen;
  }

  /** How it is looked at. */
  VersionLook look() {
    return look;
  }

  /** What is to be seen of it. */
  public Optional<CutPage> sheet() {
    return sheet;
  }

  /** Reads the history of a page, or again of the same. */
  public void open(String id) {
    if (page.filter(id::equals).isEmpty()) {
      versions = Optional.empty();
      chosen = Optional.empty();
      sheet = Optional.empty();
      look = VersionLook.CHANGED;
      page = Optional.of(id);
    }
    lookAgain();
  }

  /** Reads it again. */
  public void lookAgain() {
    page.ifPresent(this::read);
  }

  private void read(String id) {
    stage = versions.isPresent() ? stage : HistoryStage.READING;
    trouble = "";
    reading.run(
        "Reading the history",
        () -> Tried.of(() -> versions(id)),
        tried -> tried.told(this::take, this::failed),
        () -> failed("The history could not be read."));
    tell();
  }

  private Optional<PageVersions> versions(String id) throws IOException {
    outside.guard().begins("reading the history");
    return PageVersions.read(outside.folders(), id);
  }

  private void failed(String why) {
    stage = HistoryStage.TROUBLE;
    trouble = why;
    tell();
  }

  private void take(Optional<PageVersions> read) {
    stage = read.isPresent() ? HistoryStage.READ : HistoryStage.NO_HISTORY;
    versions = read;
    Optional<String> before = chosen.map(each -> each.version().id());
    chosen =
        read.flatMap(
            now ->
                now.entries().stream()
                    .filter(each -> before.filter(each.version().id()::equals).isPresent())
                    .findFirst()
                    .or(() -> now.entries().stream().findFirst()));
    show();
  }

  /** Looks at a version. */
  void choose(Entry entry) {
    chosen = Optional.of(entry);
    show();
  }

  /** Looks at it in another way. */
  public void look(VersionLook other) {
    look = other;
    show();
  }

  /**
   * Looks at the page as it stood at the end of a day.
   *
   * @return what is wrong with that; empty when nothing is
   */
  public Optional<String> on(LocalDate day) {
    Optional<Version> found =
        versions.flatMap(read -> PageHistory.on(read.versions(), day, outside.zone()));
    if (found.filter(Version::isThere).isEmpty()) {
      return Optional.of("The page was not there on " + DayText.written(day) + ".");
    }
    versions.stream()
        .flatMap(read -> read.entries().stream())
        .filter(each -> each.version().equals(found.get()))
        .findFirst()
        .ifPresent(each -> chosen = Optional.of(each));
    look(VersionLook.THEN);
    return Optional.empty();
  }

  private void show() {
    tell();
    if (versions.isEmpty() || chosen.isEmpty()) {
      sheet = Optional.empty();
      return;
    }
    PageVersions read = versions.get();
    Version version = chosen.get().version();
    VersionLook how = look;
    Library library = outside.session().library();
    sheets.run(
        "Reading a version",
        () -> Tried.of(() -> sheet(read, version, how, library)),
        tried -> tried.told(this::showSheet, this::failed));
  }

  private void showSheet(CutPage made) {
    sheet = Optional.of(made);
    tell();
  }

  private CutPage sheet(PageVersions read, Version version, VersionLook how, Library library)
      throws IOException {
    outside.guard().begins("reading a version");
    try (HistoryFolder place = HistoryFolder.of(outside.folders()).orElseThrow()) {
      PageHistory history = new PageHistory(place);
      VersionSheet sheets = new VersionSheet(library, read.path());
      String then = history.text(version).orElse("");
      String which = VersionWords.which(version);
      return switch (how) {
        case THEN -> sheets.stood(then, "As it stood after: " + which);
        case SINCE ->
            sheets.differences(
                then, history.now(read.path()).orElse(""), "From then to now. Then: " + which);
        case CHANGED -> {
          Optional<Version> before = read.before(version);
          String old = before.isPresent() ? history.text(before.get()).orElse("") : "";
          yield sheets.differences(old, then, which);
        }
      };
    }
  }

  /** Whether the chosen version can be brought back. */
  boolean canRestore() {
    boolean now =
        versions
            .filter(read -> !read.unrecorded())
            .filter(read -> read.entries().get(0).equals(chosen.orElse(null)))
            .isPresent();
    return chosen.filter(each -> each.version().isThere()).isPresent() && !now;
  }

  /** Brings the chosen version back as a new one; without effect when nobody says who records. */
  public void restore() {
    if (!canRestore()) {
      return;
    }
    PageVersions read = versions.orElseThrow();
    Version version = chosen.orElseThrow().version();
    Optional<Author> author = outside.who().of(read.recorder());
    if (author.isPresent()) {
      outside
          .background()
          .run(
              "Writing the restored page",
              () -> Tried.of(() -> restore(read.path(), version, author.get())),
              tried -> tried.told(this::restored, this::failed));
    }
  }

  private Restorer.Restored restore(String path, Version version, Author author)
      throws IOException {
    outside.guard().begins("restoring a page");
    try (HistoryFolder place = HistoryFolder.of(outside.folders()).orElseThrow()) {
      return new Restorer(place).restore(path, version, author);
    }
  }

  private void restored(Restorer.Restored done) {
    String kept = done.kept().isPresent() ? " What stood there before is kept as a version." : "";
    outside
        .notices()
        .tell(
            (done.now().isPresent() ? "Restored: " + title() + "." : "The page stands so already.")
                + kept);
    chosen = Optional.empty();
    outside.changed().run();
    lookAgain();
  }

  /** Begins a history with all that is there; without effect when nobody says who records. */
  public void begin() {
    Optional<Author> author = outside.who().of(Optional.empty());
    if (author.isPresent()) {
      outside
          .background()
          .run(
              "Writing the first version",
              () -> Tried.of(() -> begin(author.get())),
              tried -> tried.told(this::wasBegun, this::failed));
    }
  }

  private int begin(Author author) throws IOException {
    outside.guard().begins("beginning a history");
    return Beginning.begin(outside.folders(), author);
  }

  private void wasBegun(int files) {
    outside
        .notices()
        .tell("The history is begun, with " + CountWords.of(files, "file", "files") + ".");
    lookAgain();
    begun.run();
  }
}
