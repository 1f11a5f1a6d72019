package limberboard.desktop.window;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.WindowConstants;
import limberboard.desktop.base.Activity;
import limberboard.desktop.base.Memory;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Place;
import limberboard.desktop.base.Session;
import limberboard.desktop.base.Settings;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.TextHabits;

/** The window. It remembers where it stood and which place was shown. */
public final class MainWindow {
  /** The least size at which everything holds, in pixels of the usual text size. */
  public static final Dimension LEAST = new Dimension(1000, 680);

  private final JFrame frame = new JFrame("Limberboard");
  private final CardLayout cards = new CardLayout();
  private final JPanel shown = new JPanel(cards);
  private final List<Place> places;
  private final Memory memory;
  private final Notices notices;
  private final PlaceRail rail;
  private final TopStrip strip;
  private final StatusLine status;
  private final Session session;
  private final ViewMenu view;
  private Place current;
  private Runnable closed = () -> {};
  private Consumer<Place> went = place -> {};

  /**
   * A window that is not yet shown.
   *
   * @param session what the window is about
   * @param settings how things are shown
   * @param memory remembers the window's place
   * @param activity what is being done
   * @param notices messages
   * @param search the search field
   * @param places the places, at least one, in the order of the rail
   */
  public MainWindow(
      Session session,
      Settings settings,
      Memory memory,
      Activity activity,
      Notices notices,
      JComponent search,
      List<Place> places) {
    this.session = session;
    this.memory = memory;
    this.notices = notices;
    this.places = List.copyOf(places);
    this.view = new ViewMenu(settings);
    this.strip = new TopStrip(session, search, view);
    this.rail = new PlaceRail(this.places, this::go);
    this.status = new StatusLine(activity, this::atRest);
    frame.setContentPane(content(new NoticeBand(notices)));
    frame.setMinimumSize(LEAST);
    frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    frame.addWindowListener(new Closing());
    session.onChange(this::refresh);
    TextHabits.install();
    keys(search);
    go(remembered());
    refresh();
  }

  private JPanel content(JComponent band) {
    places.forEach(place -> shown.add(place.component(), place.id()));
    JPanel middle = new JPanel(new BorderLayout());
    middle.add(band, BorderLayout.NORTH);
    middle.add(shown, BorderLayout.CENTER);
    JPanel content = new JPanel(new BorderLayout());
    content.add(strip, BorderLayout.NORTH);
    content.add(rail, BorderLayout.WEST);
    content.add(middle, BorderLayout.CENTER);
    content.add(status, BorderLayout.SOUTH);
    return content;
  }

  private void keys(JComponent search) {
    JComponent root = frame.getRootPane();
    Regions regions = new Regions(this::regions);
    Keys.everywhere(root, "F6", () -> regions.move(1));
    Keys.everywhere(root, "shift F6", () -> regions.move(-1));
    Keys.everywhere(root, "control F", () -> find(search));
    Keys.everywhere(root, "control L", () -> Regions.focus(search));
    Keys.everywhere(root, "F3", () -> findNext(true));
    Keys.everywhere(root, "shift F3", () -> findNext(false));
    Keys.everywhere(root, "control P", this::print);
    for (String larger : List.of("PLUS", "EQUALS", "shift EQUALS", "ADD")) {
      Keys.everywhere(root, "control " + larger, () -> view.step(1));
    }
    for (String smaller : List.of("MINUS", "SUBTRACT")) {
      Keys.everywhere(root, "control " + smaller, () -> view.step(-1));
    }
    for (String usual : List.of("0", "NUMPAD0")) {
      Keys.everywhere(root, "control " + usual, view::usual);
    }
  }

  private void find(JComponent search) {
    current.find().ifPresentOrElse(Place.Find::begin, () -> Regions.focus(search));
  }

  private void findNext(boolean forward) {
    current.find().ifPresent(find -> find.next(forward));
  }

  private void print() {
    current
        .print()
        .ifPresentOrElse(
            Runnable::run,
            () -> notices.tell("There is nothing to print in " + current.title() + " just now."));
  }

  private List<JComponent> regions() {
    List<JComponent> all = new ArrayList<>(current.regions());
    all.addAll(strip.regions());
    all.add(rail.current());
    return all;
  }

  private Place remembered() {
    String id = memory.text("place").orElse("");
    return places.stream().filter(place -> place.id().equals(id)).findFirst().orElse(places.get(0));
  }

  /** Shows a place, unless the one that is shown must not be left. */
  public void go(Place place) {
    if (current != null && current != place && !current.mayLeave(() -> go(place))) {
      rail.mark(current.id());
      return;
    }
    current = place;
    cards.show(shown, place.id());
    rail.mark(place.id());
    memory.remember("place", place.id());
    Regions.focus(place.begin());
    went.accept(place);
  }

  /** Shows the window where it stood last time. */
  public void show() {
    frame.setSize(1280, 800);
    frame.setLocationRelativeTo(null);
    memory.bounds("window").filter(Screens::shows).ifPresent(frame::setBounds);
    frame.setVisible(true);
    Regions.focus(current.begin());
  }

  /** Says what happens each time a place is shown. */
  public void onGo(Consumer<Place> action) {
    went = action;
  }

  /** Says what happens once the window has been closed. */
  public void onClosed(Runnable action) {
    closed = action;
  }

  /** The place that is shown. */
  public Place current() {
    return current;
  }

  /** The frame, for dialogs above it and for pictures of it. */
  public JFrame frame() {
    return frame;
  }

  private void refresh() {
    status.refresh();
    frame.setTitle(session.boat().map(boat -> boat.name() + ", Limberboard").orElse("Limberboard"));
  }

  private String atRest() {
    if (!session.isRead()) {
      return "The library has not been read yet";
    }
    int pages = session.library().pages().size();
    int problems = session.workspace().problems().size();
    return counted(pages, "page")
        + ", "
        + counted(session.workspace().boats().size(), "boat")
        + (problems == 0 ? "" : ", " + counted(problems, "problem") + " in the files: see Pages");
  }

  private static String counted(int number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  private void close() {
    if (places.stream().allMatch(place -> place.mayClose(this::close))) {
      memory.remember("window", frame.getBounds());
      frame.dispose();
      closed.run();
    }
  }

  private final class Closing extends WindowAdapter {
    @Override
    public void windowClosing(WindowEvent e) {
      close();
    }
  }
}
