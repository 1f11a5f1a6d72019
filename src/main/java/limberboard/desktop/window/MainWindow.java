package limberboard.desktop.window;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.WindowConstants;
import limberboard.boat.Boat;
import limberboard.desktop.base.Activity;
import limberboard.desktop.base.Memory;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Place;
import limberboard.desktop.base.Session;
import limberboard.desktop.base.Settings;
import limberboard.desktop.look.AppIcon;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.TextHabits;

/** The window. It remembers where it stood and which place was shown. */
public final class MainWindow {
  /** The least size of the window; less where the screen has less. */
  public static final Dimension LEAST = new Dimension(1000, 680);

  private static final Dimension USUAL = new Dimension(1280, 800);

  private final JFrame frame = new OnceFrame("Limberboard");
  private final CardLayout cards = new CardLayout();
  private final JPanel shown = new JPanel(cards);
  private final List<Place> places;
  private final Memory memory;
  private final PlaceRail rail;
  private final TopStrip strip;
  private final StatusLine status;
  private final Session session;
  private final WindowMenu menu;
  private final String workspace;
  private final WindowCommands commands;
  private Place current;
  private Runnable closed = () -> {};
  private Consumer<Place> went = place -> {};

  /**
   * A window that is not yet shown.
   *
   * @param workspace the workspace's name
   * @param actions what the menu does outside the window
   * @param session what the window is about
   * @param settings how things are shown
   * @param memory remembers the window's place
   * @param activity what is being done
   * @param notices messages
   * @param search the search field
   * @param places the places, at least one, in the order of the rail
   */
  public MainWindow(
      String workspace,
      Actions actions,
      Session session,
      Settings settings,
      Memory memory,
      Activity activity,
      Notices notices,
      JComponent search,
      List<Place> places) {
    this.workspace = workspace;
    this.session = session;
    this.memory = memory;
    this.places = List.copyOf(places);
    ViewMenu view = new ViewMenu(settings);
    this.commands =
        new WindowCommands(
            frame, actions, session, notices, view, search, () -> current, this::close);
    this.menu = new WindowMenu(commands::all, view);
    this.strip = new TopStrip(session, commands::notEntered, search, menu);
    this.rail = new PlaceRail(this.places, this::go);
    this.status = new StatusLine(activity, session);
    frame.setContentPane(content(new NoticeBand(notices)));
    frame.addPropertyChangeListener("graphicsConfiguration", e -> least());
    frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    frame.addWindowListener(new Closing());
    session.onChange(this::refresh);
    TextHabits.install();
    keys();
    frame.setIconImages(AppIcon.images());
    places.forEach(place -> place.onSubject(this::retitle));
    go(remembered());
    refresh();
  }

  private void least() {
    frame.setMinimumSize(Screens.least(LEAST, Screens.usable(frame)));
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

  private void keys() {
    JComponent root = frame.getRootPane();
    Regions regions = new Regions(this::regions);
    Keys.everywhere(root, "F6", () -> regions.move(1));
    Keys.everywhere(root, "shift F6", () -> regions.move(-1));
    Keys.everywhere(root, "F10", menu::open);
    commands.all().values().forEach(group -> group.forEach(command -> command.bind(root)));
  }

  /** Marks the boat of this id, if any, as one whose form has changes that are not saved. */
  public void unsaved(Optional<String> boat) {
    strip.unsaved(boat);
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
    retitle();
    Regions.focus(place.begin());
    went.accept(place);
  }

  /** Shows the window where it stood last time. */
  public void show() {
    frame.setBounds(Screens.place(frame, memory.bounds("window"), USUAL));
    least();
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

  /** Tells something in a dialog above the window, whose text can be selected and copied. */
  public void tell(String title, String text) {
    JTextArea area = new JTextArea(text);
    area.setEditable(false);
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
    area.setColumns(52);
    area.getAccessibleContext().setAccessibleName(title);
    JOptionPane.showMessageDialog(frame, area, title, JOptionPane.PLAIN_MESSAGE);
  }

  /** The frame, for dialogs above it and for pictures of it. */
  public JFrame frame() {
    return frame;
  }

  private void refresh() {
    status.refresh();
    retitle();
  }

  /** What is shown, for which boat, of which workspace: so that two windows can be told apart. */
  private void retitle() {
    List<String> parts = new ArrayList<>();
    parts.add(current.subject().orElse(current.name().title()));
    session.boat().map(Boat::name).ifPresent(parts::add);
    parts.add(workspace);
    parts.add("Limberboard");
    frame.setTitle(String.join(" \u00b7 ", parts));
  }

  /** Closes the window once every place lets it. */
  private void close() {
    close(closed);
  }

  /**
   * Closes the window once every place lets it, and does something else then than usual.
   *
   * @param then what is done once it is closed
   */
  public void close(Runnable then) {
    if (places.stream().allMatch(place -> place.mayClose(() -> close(then)))) {
      memory.remember("window", frame.getBounds());
      frame.dispose();
      then.run();
    }
  }

  private final class Closing extends WindowAdapter {
    @Override
    public void windowClosing(WindowEvent e) {
      close();
    }
  }
}
