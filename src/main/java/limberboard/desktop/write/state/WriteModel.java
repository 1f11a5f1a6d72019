package limberboard.desktop.write.state;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Observed;
import limberboard.desktop.base.Session;
import limberboard.findings.FileRepair;
import limberboard.library.Library;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.writing.PageText;
import limberboard.writing.save.KeptTexts;
import limberboard.writing.start.BegunPage;
import limberboard.writing.typing.PageTyping;

/**
 * The pages that are being written, without Swing: opened, begun, typed, looked at and kept. For
 * the event thread only.
 */
public final class WriteModel extends Observed {
  private final Session session;
  private final Notices notices;
  private final PageChecks checks;
  private final PageKeeping keeping;
  private final PageSaving saving;
  private final PageChanges changes;
  private final BothVersions versions;
  private final FileFollowing following;
  private final PageOpening opening;
  private final List<OpenPage> pages = new ArrayList<>();
  private Optional<OpenPage> current = Optional.empty();
  private Library library;

  /**
   * A model without pages.
   *
   * @param session tells the library
   * @param notices is told what cannot be done
   * @param outside what is touched outside the window
   */
  public WriteModel(Session session, Notices notices, WriteOutside outside) {
    this.session = session;
    this.notices = notices;
    this.library = session.library();
    checks = new PageChecks(outside, session::library);
    keeping = new PageKeeping(outside);
    saving = new PageSaving(outside, notices, keeping, checks);
    versions = new BothVersions(this, outside);
    following = new FileFollowing(this, notices, outside);
    changes = new PageChanges(this, session, notices, outside);
    opening = new PageOpening(this, notices, outside);
    session.onChange(this::readAgain);
  }

  /** The library as it was last read. */
  public Library library() {
    return session.library();
  }

  /** The pages that are open, in the order in which they were opened. */
  public List<OpenPage> pages() {
    return List.copyOf(pages);
  }

  /** The pages with something to be saved. */
  public List<OpenPage> unsaved() {
    return pages.stream().filter(OpenPage::isChanged).toList();
  }

  /** The page that is written. */
  public Optional<OpenPage> current() {
    return current;
  }

  /** Keeps what is typed, and offers back what was left. */
  public PageKeeping keeping() {
    return keeping;
  }

  /** Saves and records. */
  public PageSaving saving() {
    return saving;
  }

  /** Decides between two versions of a page. */
  public BothVersions versions() {
    return versions;
  }

  /** Renames, deletes, puts pictures in. */
  public PageChanges changes() {
    return changes;
  }

  /** Opens a page of the library for writing; without effect when there is none of this id. */
  public void open(String id) {
    open(id, Optional.empty());
  }

  /**
   * The same, with the caret at a heading of its text, if it has that.
   *
   * @param heading as it reads
   */
  public void open(String id, Optional<String> heading) {
    opening.open(id, heading);
  }

  /** Opens the file of a page that cannot be read as a page just now. */
  public void openFile(String path, Kind kind) {
    opening.openFile(path, kind);
  }

  /**
   * Opens the file of a page with the caret on a line, whether or not it can be read as a page.
   *
   * @param path of the file, relative to the workspace
   * @param line from 1; 0 for the beginning
   * @return whether it is the file of a page
   */
  public boolean openLine(String path, int line) {
    Optional<Kind> kind = Kinds.of(path);
    kind.ifPresent(of -> opening.openLine(path, of, line));
    return kind.isPresent();
  }

  /** Opens a text that was left by an earlier sitting. */
  public void restore(KeptTexts.Offered offered) {
    opening.restore(offered);
  }

  /** Begins a page; it has no file until it is saved. */
  public void begin(BegunPage begun) {
    OpenPage page = new OpenPage(begun.path(), begun.kind(), Optional.empty(), begun.text());
    add(page);
    keeping.typed(page);
    int at = begun.text().plain().indexOf(":\n");
    page.goTo(Math.max(0, at + 1), Math.max(0, at + 1));
  }

  /** Takes a page among those that are open. */
  OpenPage added(OpenPage page) {
    pages.add(page);
    return page;
  }

  private void add(OpenPage page) {
    show(added(page));
  }

  /** Shows a page that is open. */
  public void show(OpenPage page) {
    current = Optional.of(page);
    tell();
    checks.look(page);
  }

  /** Takes what was typed in a page. */
  public void typed(OpenPage page, String plain) {
    if (!page.text().plain().equals(plain)) {
      page.typed(plain);
      checks.afterPause(page);
      keeping.typed(page);
    }
  }

  /**
   * Makes a reader of a page's texts against all others as they are now, in the background.
   *
   * @param made takes it
   */
  public void reader(OpenPage page, Consumer<PageTyping> made) {
    checks.reader(page, made);
  }

  /** Puts another text in the place of what is typed, as if it had been typed. */
  public void replace(OpenPage page, String plain) {
    page.typist().ifPresentOrElse(where -> where.replace(plain), () -> typed(page, plain));
  }

  /** Makes the one step that mends a finding, as if it had been typed. */
  public void repair(OpenPage page, FileRepair step) {
    step.in(page.text().text())
        .ifPresentOrElse(
            text -> replace(page, new PageText(text).plain()),
            () -> notices.warn(step.gone() + "."));
  }

  /** The same to the letter, with its line ends. */
  void restore(OpenPage page, PageText text) {
    replace(page, text.plain());
    page.exactly(text);
    checks.look(page);
    keeping.typed(page);
  }

  /** Closes a page; what is not saved of it is thrown away. */
  public void close(OpenPage page) {
    keeping.forget(page.path());
    remove(page);
  }

  /** Closes a page of which everything is saved; says what to do about another. */
  public void closeSaved(OpenPage page) {
    if (page.isChanged()) {
      notices.warn(
          "“" + page.title() + "” is not saved. Save it or drop the changes, then close it.");
    } else {
      close(page);
    }
  }

  /** Keeps now what is not saved, for the next time that the workspace is opened. */
  public void keepAll() {
    unsaved().forEach(keeping::keep);
  }

  /** Takes a page away whose file is gone; what was kept of it stays. */
  void remove(OpenPage page) {
    pages.remove(page);
    if (current.filter(page::equals).isPresent()) {
      current = pages.isEmpty() ? Optional.empty() : Optional.of(pages.get(pages.size() - 1));
      current.ifPresent(checks::look);
    }
    tell();
  }

  /** Shows a page that was made elsewhere. */
  void adopt(OpenPage page) {
    add(page);
  }

  /**
   * Puts what its file holds in the place of what was typed; undo takes that back. A page without a
   * file is closed.
   */
  public void throwAway(OpenPage page) {
    if (page.saved().isPresent()) {
      restore(page, page.saved().get());
      return;
    }
    close(page);
    notices.tell(
        "“" + page.title() + "” was not saved, and is closed.",
        new Notices.Offer(
            "Bring it back",
            () -> {
              notices.dismiss();
              add(page);
              keeping.typed(page);
            }));
  }

  /** The file of a page has got another name. */
  void moved(OpenPage page, String path) {
    keeping.forget(page.path());
    page.moved(path);
  }

  /** The library was read again: others may have changed, and the files of open pages, too. */
  private void readAgain() {
    if (session.library() == library) {
      return;
    }
    library = session.library();
    pages.forEach(page -> page.typing(Optional.empty()));
    current.ifPresent(checks::prepare);
    tell();
    following.look();
  }

  /** A page of the library, by its id. */
  public Optional<Page<?>> page(String id) {
    return session.library().page(id);
  }
}
