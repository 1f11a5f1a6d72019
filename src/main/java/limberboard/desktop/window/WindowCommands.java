package limberboard.desktop.window;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JFrame;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Place;
import limberboard.desktop.base.Session;

/**
 * Everything the window can do, with its keys, for the menu and for the keyboard.
 *
 * @param frame the window
 * @param actions what is done outside the window
 * @param session what the window is about
 * @param notices is told when there is nothing to do
 * @param view how things are shown
 * @param search the search field
 * @param current the place that is shown
 * @param close closes the window
 */
record WindowCommands(
    JFrame frame,
    Actions actions,
    Session session,
    Notices notices,
    ViewMenu view,
    JComponent search,
    Supplier<Place> current,
    Runnable close) {

  /** Everything the window can do, by group. */
  Map<String, List<Command>> all() {
    Map<String, List<Command>> groups = new LinkedHashMap<>();
    groups.put(
        "Boat",
        List.of(
            Command.of("New boat", "control N", actions::newBoat),
            new Command("A boat not entered …", List.of(), this::notEntered),
            new Command("What is known of a bought boat", List.of(), actions::beginLog)));
    groups.put(
        "This place",
        List.of(
            Command.of("Print …", "control P", this::print),
            Command.of("Find in it", "control F", this::find),
            Command.of("Find the next", "F3", () -> findNext(true)),
            Command.of("Find the one before", "shift F3", () -> findNext(false)),
            Command.of("Search everything", "control L", () -> Regions.focus(search))));
    groups.put(
        "Text size",
        List.of(
            new Command(
                "Larger",
                List.of("control PLUS", "control EQUALS", "control shift EQUALS", "control ADD"),
                () -> view.step(1)),
            new Command(
                "Smaller", List.of("control MINUS", "control SUBTRACT"), () -> view.step(-1)),
            new Command("As usual", List.of("control 0", "control NUMPAD0"), view::usual)));
    groups.put("Workspace", workspaces());
    groups.put(
        "Help",
        List.of(
            Command.of("User guide", "F1", () -> actions.help(current.get().id())),
            new Command("About Limberboard", List.of(), actions::about)));
    return groups;
  }

  private List<Command> workspaces() {
    List<Command> all = new ArrayList<>();
    all.add(Command.of("Open workspace …", "control O", actions::openWorkspace));
    for (Path recent : actions.recent()) {
      all.add(new Command("Open " + recent, List.of(), () -> actions.openWorkspace(recent)));
    }
    all.add(Command.of("Read the files again", "F5", actions::readAgain));
    all.add(Command.of("A quick note …", "control J", actions::quickNote));
    all.add(new Command("Notes", List.of(), () -> actions.workspace("notes")));
    all.add(new Command("Findings", List.of(), () -> actions.workspace("findings")));
    all.add(
        new Command(
            "Share with another copy: pull, push", List.of(), () -> actions.workspace("sharing")));
    all.add(new Command("Close", List.of("control W", "control Q"), close));
    return all;
  }

  /** Asks for a boat that nobody has entered, and chooses it. */
  void notEntered() {
    int lastYear = session.today().getYear() + 1;
    UnknownBoatDialog.ask(frame, new UnknownBoat(session.library(), lastYear))
        .ifPresent(boat -> session.choose(Optional.of(boat.id())));
  }

  private void find() {
    current.get().find().ifPresentOrElse(Place.Find::begin, () -> Regions.focus(search));
  }

  private void findNext(boolean forward) {
    current.get().find().ifPresent(find -> find.next(forward));
  }

  private void print() {
    current
        .get()
        .print()
        .ifPresentOrElse(
            Runnable::run,
            () ->
                notices.tell(
                    "There is nothing to print in " + current.get().name().title() + " just now."));
  }
}
