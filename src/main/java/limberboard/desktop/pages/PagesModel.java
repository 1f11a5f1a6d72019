package limberboard.desktop.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntSupplier;
import limberboard.boat.Fit;
import limberboard.boat.Fitting;
import limberboard.desktop.base.Memory;
import limberboard.desktop.base.Session;
import limberboard.library.Kind;
import limberboard.library.Page;
import limberboard.library.Problem;

/** What the pages place shows, without Swing. For the event thread only. */
public final class PagesModel {
  private static final String LAST = "page";
  private final Session session;
  private final Memory memory;
  private final List<Runnable> listeners = new ArrayList<>();
  private final History history = new History();
  private IntSupplier position = () -> 0;
  private String filter = "";
  private boolean forAllBoats;
  private boolean problemsShown;

  /**
   * A model on the page that was read last time.
   *
   * @param session tells library and boat
   * @param memory remembers the page
   */
  public PagesModel(Session session, Memory memory) {
    this.session = session;
    this.memory = memory;
    memory.text(LAST).ifPresent(id -> history.visit(id, 0));
    session.onChange(this::tell);
  }

  /** Calls the listener after each change. */
  public void onChange(Runnable listener) {
    listeners.add(listener);
  }

  /** Says how the model learns how far a page has been scrolled. */
  public void positionFrom(IntSupplier pixels) {
    position = pixels;
  }

  /** Whether the library has been read. */
  public boolean isRead() {
    return session.isRead();
  }

  /** The contents, as far as the filter lets them through. */
  List<Contents.Node> contents() {
    return Contents.of(session.library(), filter, session.fitting());
  }

  /** What the contents are filtered by. */
  public String filter() {
    return filter;
  }

  /** Filters the contents. */
  public void filter(String words) {
    filter = words;
    tell();
  }

  /** The page that is read, if the library has it. */
  public Optional<Page<?>> page() {
    return history.now().flatMap(visit -> session.library().page(visit.id()));
  }

  /** How far the page was scrolled when it was left. */
  public int position() {
    return history.now().map(History.Visit::position).orElse(0);
  }

  /** Opens a page; without effect when the library has none of this id. */
  public void open(String id) {
    if (session.library().page(id).isPresent()) {
      problemsShown = false;
      history.visit(id, position.getAsInt());
      moved();
    }
  }

  /** Whether there is a page to go back to. */
  public boolean canGoBack() {
    return history.canGoBack();
  }

  /** Whether there is a page to go forward to. */
  public boolean canGoForward() {
    return history.canGoForward();
  }

  /** Goes back to the page read before. */
  public void back() {
    problemsShown = false;
    history.back(position.getAsInt());
    moved();
  }

  /** Goes forward again. */
  public void forward() {
    problemsShown = false;
    history.forward(position.getAsInt());
    moved();
  }

  private void moved() {
    history.now().ifPresent(visit -> memory.remember(LAST, visit.id()));
    tell();
  }

  /** Whether pages are shown for all boats. */
  public boolean forAllBoats() {
    return forAllBoats;
  }

  /** Shows pages for all boats, or cut to the chosen one. */
  public void forAllBoats(boolean all) {
    forAllBoats = all;
    tell();
  }

  /** The chosen boat today. */
  public Optional<Fitting> boat() {
    return session.fitting();
  }

  /** Whether the page is for the chosen boat, with the reason; empty without page or boat. */
  public Optional<Fit> fit() {
    return page().flatMap(page -> session.fitting().map(boat -> boat.judge(page.head().fits())));
  }

  /** Whether the page is a symptom that can be traced on the chosen boat. */
  public boolean canTrace() {
    return page().map(page -> page.kind() == Kind.SYMPTOM).orElse(false)
        && fit().map(Fit::fits).orElse(false);
  }

  /** The pages that this page refers to, by kind and title. */
  public List<Page<?>> linksFrom() {
    return page().map(page -> sorted(session.library().linksFrom(page.id()))).orElse(List.of());
  }

  /** The pages that refer to this page, by kind and title. */
  public List<Page<?>> linksTo() {
    return page().map(page -> sorted(session.library().linksTo(page.id()))).orElse(List.of());
  }

  private List<Page<?>> sorted(Iterable<String> ids) {
    List<Page<?>> pages = new ArrayList<>();
    ids.forEach(id -> session.library().page(id).ifPresent(pages::add));
    pages.sort(Comparator.<Page<?>, Kind>comparing(Page::kind).thenComparing(Page::title));
    return pages;
  }

  /** Everything wrong in the workspace's files. */
  public List<Problem> problems() {
    return session.workspace().problems();
  }

  /** What is wrong in the page that is read. */
  public List<Problem> problemsOfPage() {
    return page()
        .map(page -> problems().stream().filter(found -> found.file().equals(page.path())).toList())
        .orElse(List.of());
  }

  /** Whether the problems are shown instead of a page. */
  public boolean problemsShown() {
    return problemsShown;
  }

  /** Shows the problems instead of a page, or the page again. */
  public void showProblems(boolean shown) {
    problemsShown = shown;
    tell();
  }

  /** The page that lies in a file, if it could be read. */
  public Optional<Page<?>> pageIn(String file) {
    return session.library().pages().stream()
        .filter(page -> page.path().equals(file))
        .<Page<?>>map(page -> page)
        .findFirst();
  }

  private void tell() {
    List.copyOf(listeners).forEach(Runnable::run);
  }
}
