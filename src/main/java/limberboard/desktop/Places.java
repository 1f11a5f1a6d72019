package limberboard.desktop;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import limberboard.boat.Boat;
import limberboard.desktop.base.Navigator;
import limberboard.desktop.base.Place;
import limberboard.desktop.boats.BoatsPlace;
import limberboard.desktop.drills.DrillsPlace;
import limberboard.desktop.find.Found;
import limberboard.desktop.help.Guide;
import limberboard.desktop.help.HelpPlace;
import limberboard.desktop.letters.LettersPlace;
import limberboard.desktop.pages.PagesPlace;
import limberboard.desktop.read.PlaceTools;
import limberboard.desktop.trace.ToldAnswers;
import limberboard.desktop.trace.TracePlace;
import limberboard.desktop.upkeep.UpkeepPlace;
import limberboard.desktop.upkeep.WorkNotes;
import limberboard.desktop.upkeep.log.MendedEntry;
import limberboard.desktop.upkeep.state.UpkeepTools;
import limberboard.desktop.workspace.WorkspacePlace;
import limberboard.desktop.workspace.notes.NoteTies;
import limberboard.desktop.write.WritePlace;
import limberboard.desktop.write.state.WriteModel;
import limberboard.library.page.Page;
import limberboard.trace.TrailStep;

/**
 * The places of the window in their order, and the ways between them. A new place is one line in
 * the constructor, and a way here only where other places lead to it.
 */
final class Places implements Navigator {
  private final WindowAssembly desk;
  private final UpkeepPlace upkeep;
  private final LettersPlace letters;
  private final ToldAnswers told;
  private final DrillsPlace drills;
  private final WriteModel written;
  private final WritePlace write;
  private final WorkspacePlace workspace;
  private final HelpPlace help;
  private final List<Place> all;
  private Consumer<Place> go = place -> {};

  Places(WindowAssembly desk, WindowServices outside) {
    this.desk = desk;
    PlaceNeeds needs = new PlaceNeeds(desk, outside);
    PlaceTools tools = needs.tools(this);
    upkeep = UpkeepPlace.make(new UpkeepTools(desk.upkeep(), desk.log(), tools));
    told = new ToldAnswers(desk.trace());
    letters = new LettersPlace(tools, needs.letters());
    drills = new DrillsPlace(tools, needs.drills());
    written =
        new WriteModel(
            desk.session(),
            desk.notices(),
            outside
                .writing()
                .with(
                    outside,
                    desk.writing(),
                    desk.pages(),
                    desk.background(outside.threads().written())));
    written.saving().afterWriting(desk.loader()::load);
    written
        .saving()
        .afterLooking(
            found ->
                found
                    .read()
                    .page()
                    .ifPresent(
                        page ->
                            desk.loader()
                                .saved(page, found.read().library().linksFrom(page.id()))));
    write = new WritePlace(tools, written, needs.symptoms());
    workspace = new WorkspacePlace(tools, needs.workspace(this::onScreen));
    help = new HelpPlace(tools, Guide.packed());
    all =
        List.of(
            TracePlace.make(
                tools,
                desk.trace(),
                desk.aspects(),
                new MendedEntry(desk.upkeep(), desk.log()),
                desk.cases(),
                outside.clipboard().andThen(text -> desk.notices().tell("Copied.")),
                outside
                    .copied()
                    .andThen(
                        reply ->
                            desk.notices()
                                .tell("The answer is copied: paste it into your letter."))),
            new PagesPlace(tools, desk.reading(), outside.folders(), new WorkNotes(desk.upkeep())),
            upkeep,
            letters,
            drills,
            new BoatsPlace(tools, desk.boats()),
            write,
            workspace,
            help);
  }

  /** Says what shows a place. */
  void onGo(Consumer<Place> action) {
    go = action;
  }

  /** All of them, in the order in which they are offered. */
  List<Place> all() {
    return all;
  }

  /** A place by its name. */
  Place place(String id) {
    return all.stream().filter(place -> place.id().equals(id)).findFirst().orElseThrow();
  }

  UpkeepPlace upkeep() {
    return upkeep;
  }

  DrillsPlace drills() {
    return drills;
  }

  WritePlace write() {
    return write;
  }

  LettersPlace letters() {
    return letters;
  }

  private void go(String id) {
    go.accept(place(id));
  }

  @Override
  public void workspace(String part) {
    workspace.look(part);
    go.accept(workspace);
  }

  /** Asks for a quick note, about what is on the screen. */
  void quickNote() {
    workspace.quickNote();
  }

  private NoteTies onScreen() {
    String place = desk.window().current().id();
    Optional<String> page =
        place.equals("pages")
            ? desk.reading().page().map(Page::id)
            : place.equals("trace")
                ? desk.trace().trace().map(trace -> trace.fault().page().id())
                : Optional.empty();
    return new NoteTies(page, desk.session().boat().map(Boat::id));
  }

  /** Goes to the guide's part about a place. */
  void help(String place) {
    help.openFor(place);
    go.accept(help);
  }

  /** Goes to what was found. */
  void open(Found found) {
    if (found.target() instanceof Found.BoatTarget boat) {
      desk.session().choose(Optional.of(boat.id()));
      desk.session()
          .boat()
          .filter(Boat::isEntered)
          .ifPresentOrElse(entered -> openBoat(entered.id()), () -> go("trace"));
    } else if (found.target() instanceof Found.MentionedBoat boat) {
      desk.session().choose(Optional.of(boat.id()));
    } else if (found.target() instanceof Found.SymptomTarget symptom && symptom.fits()) {
      trace(symptom.id());
    } else {
      openPage(found.target().id());
    }
  }

  @Override
  public void openPage(String id) {
    desk.reading().open(id);
    go("pages");
  }

  @Override
  public void writePage(String id, Optional<String> heading) {
    written.open(id, heading);
    go.accept(write);
  }

  @Override
  public void writeLine(String file, int line) {
    if (written.openLine(file, line)) {
      go.accept(write);
    }
  }

  @Override
  public void readInFull(String page) {
    workspace.readInFull(page);
  }

  @Override
  public void history(String page) {
    workspace.history(page);
    go.accept(workspace);
  }

  @Override
  public void trace(String symptom) {
    if (desk.trace().start(symptom)) {
      go("trace");
    } else {
      openPage(symptom);
    }
  }

  @Override
  public void trace(String boat, String symptom, List<TrailStep> steps) {
    desk.session().choose(Optional.of(boat));
    if (told.start(symptom, steps)) {
      go("trace");
    } else {
      openPage(symptom);
    }
  }

  @Override
  public void openBoat(String id) {
    desk.boats().open(id);
    go("boats");
  }

  @Override
  public void logWork(String page) {
    upkeep.logWork(page);
    go.accept(upkeep);
  }

  @Override
  public void beginLog(String boat) {
    desk.session().choose(Optional.of(boat));
    desk.notices().seen();
    beginLog();
  }

  /** Goes where the log of the chosen boat is begun. */
  void beginLog() {
    upkeep.beginLog();
    go.accept(upkeep);
  }

  @Override
  public void newBoat() {
    go("boats");
    desk.boats().newBoat();
  }
}
