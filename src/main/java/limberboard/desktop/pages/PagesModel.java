package limberboard.desktop.pages;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntSupplier;
import limberboard.boat.Fit;
import limberboard.boat.Fitting;
import limberboard.desktop.base.Memory;
import limberboard.desktop.base.Observed;
import limberboard.desktop.base.Session;
import limberboard.library.Library;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.library.problem.Problem;

/** What the pages place shows, without Swing. For the event thread only. */
public final class PagesModel extends Observed {
  private static final String LAST = "page";
  private final Session session;
  private final Memory memory;
  private final VisitedPages history = new VisitedPages();
  private IntSupplier position = () -> 0;
  private String filter = "";
  private boolean forAllBoats;
  private boolean problemsShown;
  private Consumer<String> places = place -> {};
  private Optional<Filed> filed = Optional.empty();

  /** The contents as they were put together last, and from what. */
  private record Filed(
      Library library, String filter, Optional<Fitting> boat, List<Contents.Node> nodes) {}

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
    Library library = session.library();
    Optional<Fitting> boat = session.fitting();
    boolean same =
        filed
            .filter(known -> known.library() == library && known.filter().equals(filter))
            .filter(known -> known.boat().equals(boat))
            .isPresent();
    if (!same) {
      filed = Optional.of(new Filed(library, filter, boat, Contents.of(library, filter, boat)));
    }
    return filed.get().nodes();
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
    return history.page().flatMap(visit -> session.library().page(visit.id()));
  }

  /** How far the page was scrolled when it was left. */
  public int position() {
    return history.page().map(VisitedPages.Visit::position).orElse(0);
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

  /** Goes back to what was looked at before: a page, or another place of the window. */
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

  /**
   * Notes that another place of the window is looked at now.
   *
   * @param place its name
   */
  public void wentTo(String place) {
    boolean pages = place.equals(VisitedPages.PAGES);
    if (history.now().map(now -> !now.place().equals(place)).orElse(!pages)) {
      String page = pages ? history.page().map(VisitedPages.Visit::id).orElse("") : "";
      history.visit(place, page, position.getAsInt());
      tell();
    }
  }

  /** Says what shows a place of the window when one goes back or forward to it. */
  public void onPlace(Consumer<String> show) {
    places = show;
  }

  private void moved() {
    history
        .now()
        .filter(VisitedPages.Visit::isPage)
        .ifPresent(visit -> memory.remember(LAST, visit.id()));
    tell();
    history.now().ifPresent(visit -> places.accept(visit.place()));
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

  /** Whether the page that lies in a file could be read, whatever else is wrong in it. */
  public boolean works(String file) {
    return session.library().pages().stream().anyMatch(page -> page.path().equals(file));
  }

  /** What keeps the page that one wants to read from being read; empty when nothing does. */
  public Optional<Problem> broken() {
    return page().isPresent()
        ? Optional.empty()
        : history
            .page()
            .map(visit -> "/" + visit.id() + ".md")
            .flatMap(name -> problems().stream().filter(p -> p.file().endsWith(name)).findFirst());
  }
}
