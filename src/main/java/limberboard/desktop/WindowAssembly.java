package limberboard.desktop;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import limberboard.boat.Boat;
import limberboard.boat.CaseWriter;
import limberboard.desktop.base.Activity;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Navigator;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Place;
import limberboard.desktop.base.Session;
import limberboard.desktop.base.Settings;
import limberboard.desktop.boats.BoatFormModel;
import limberboard.desktop.drills.DrillsPlace;
import limberboard.desktop.find.SearchField;
import limberboard.desktop.find.SearchModel;
import limberboard.desktop.letters.LettersPlace;
import limberboard.desktop.look.Theme;
import limberboard.desktop.pages.PagesModel;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.trace.Aspects;
import limberboard.desktop.trace.KeptTraces;
import limberboard.desktop.trace.MendedCases;
import limberboard.desktop.trace.TraceModel;
import limberboard.desktop.trace.WhyModel;
import limberboard.desktop.tree.TreeModel;
import limberboard.desktop.upkeep.UpkeepPlace;
import limberboard.desktop.upkeep.entry.LogModel;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.desktop.window.Actions;
import limberboard.desktop.window.MainWindow;
import limberboard.desktop.write.WritePlace;
import limberboard.library.file.UserFolders;

/** Puts the window together: models, places, strip, and the ways between them. */
final class WindowAssembly {
  private final WindowServices outside;
  private final Settings settings;
  private final Activity activity = new Activity();
  private final Notices notices;
  private final Background library;
  private final Background pages;
  private final Background letters;
  private final Session session;
  private final SearchModel search;
  private final TraceModel trace;
  private final Aspects aspects;
  private final PagesModel reading;
  private final UpkeepModel upkeep;
  private final LogModel log;
  private final MendedCases cases;
  private final BoatFormModel boats;
  private final Loader loader;
  private final Places places;
  private final MainWindow window;
  private Opener opener = Opener.NONE;

  WindowAssembly(WindowServices outside, Settings settings) {
    this(outside, settings, new Notices());
  }

  WindowAssembly(WindowServices outside, Settings settings, Notices notices) {
    this.outside = outside;
    this.notices = notices;
    this.settings = settings;
    settings.onChange(this::restyle);
    this.library = background(outside.threads().library());
    this.pages = background(outside.threads().pages());
    this.letters = background(outside.threads().letters());
    this.session = new Session(outside.clock(), outside.memory().text("boat"));
    Background searching = background(outside.threads().search());
    this.search = new SearchModel(session, searching, outside.typing());
    search.onMissed(new SearchKeeping(outside.folders(), library));
    this.trace =
        new TraceModel(
            session,
            pages,
            new KeptTraces(outside.traces(), library, notices),
            notices,
            outside.guard());
    this.aspects =
        new Aspects(
            trace, new TreeModel(background(outside.threads().trees())), new WhyModel(pages));
    this.reading = new PagesModel(session, outside.memory());
    this.upkeep = new UpkeepModel(session, pages, outside.folders());
    this.log = new LogModel(session, outside.logs(), library);
    this.cases = new MendedCases(session, new CaseWriter(outside.folders()), library, notices);
    this.boats = new BoatFormModel(session, outside.boats(), library, notices);
    this.loader =
        new Loader(outside.reader(), outside.index(), library, searching, session, search);
    this.places = new Places(this, outside);
    boats.afterSaving(loader::load);
    log.afterWriting(loader::load);
    cases.afterWriting(loader::load);
    session.onChange(this::rememberBoat);
    new VanishedBoat(session, notices);
    this.window =
        new MainWindow(
            outside.name(),
            actions(),
            session,
            settings,
            outside.memory(),
            activity,
            notices,
            new SearchField(search, places::open),
            places.all());
    places.onGo(window::go);
    window.frame().getRootPane().setTransferHandler(places.letters().dropping(() -> go("letters")));
    loader.afterReading(places.letters()::lookAgain);
    boats.onChange(() -> window.unsaved(unsaved()));
    wayBack();
  }

  /** The boat whose form has changes that are not saved. */
  private Optional<String> unsaved() {
    return boats.form().isChanged() ? boats.form().original().map(Boat::id) : Optional.empty();
  }

  /** Back and forward go through pages and places, wherever one is. */
  private void wayBack() {
    JComponent root = window.frame().getRootPane();
    Keys.everywhere(root, "alt LEFT", reading::back);
    Keys.everywhere(root, "alt RIGHT", reading::forward);
    reading.onPlace(
        id -> {
          if (!window.current().id().equals(id)) {
            go(id);
          }
        });
    window.onGo(place -> reading.wentTo(place.id()));
  }

  /** Whether nothing is being done in the background. */
  boolean isQuiet() {
    return activity.now().isEmpty();
  }

  /** Says who opens other workspaces. */
  void opener(Opener other) {
    opener = other;
  }

  private Actions actions() {
    return new Actions() {
      @Override
      public void newBoat() {
        places.newBoat();
      }

      @Override
      public void beginLog() {
        places.beginLog();
      }

      @Override
      public void readAgain() {
        loader.load();
      }

      @Override
      public void openWorkspace() {
        opener.ask();
      }

      @Override
      public void openWorkspace(Path root) {
        opener.open(root);
      }

      @Override
      public List<Path> recent() {
        return opener.recent();
      }

      @Override
      public void workspace(String part) {
        places.workspace(part);
      }

      @Override
      public void quickNote() {
        places.quickNote();
      }

      @Override
      public void help(String place) {
        places.help(place);
      }

      @Override
      public void about() {
        String text = new About(About.builtVersion(), outside.folders(), UserFolders.here()).text();
        window.tell("About Limberboard", text);
      }
    };
  }

  /** Runs work on one of the threads. */
  Background background(java.util.concurrent.Executor worker) {
    return new Background(worker, outside.threads().event(), activity, notices);
  }

  private void rememberBoat() {
    if (session.isRead()) {
      outside.memory().remember("boat", session.chosen().orElse(""));
    }
  }

  /** The first to hear of a change, so that the others find the new colours. */
  private void restyle() {
    Theme.apply(settings.theme(), settings.textPercent());
  }

  MainWindow window() {
    return window;
  }

  Loader loader() {
    return loader;
  }

  Notices notices() {
    return notices;
  }

  Session session() {
    return session;
  }

  Settings settings() {
    return settings;
  }

  SearchModel search() {
    return search;
  }

  TraceModel trace() {
    return trace;
  }

  Aspects aspects() {
    return aspects;
  }

  PagesModel reading() {
    return reading;
  }

  UpkeepModel upkeep() {
    return upkeep;
  }

  LogModel log() {
    return log;
  }

  MendedCases cases() {
    return cases;
  }

  WritePlace writePlace() {
    return places.write();
  }

  /** The ways between the places. */
  Navigator navigator() {
    return places;
  }

  UpkeepPlace upkeepPlace() {
    return places.upkeep();
  }

  BoatFormModel boats() {
    return boats;
  }

  /** Goes to a place by its name. */
  void go(String id) {
    window.go(place(id));
  }

  /** The places by their names. */
  Place place(String id) {
    return places.place(id);
  }

  /** What reads and recognises letters. */
  Background letters() {
    return letters;
  }

  /** What reads the workspace and writes into it. */
  Background writing() {
    return library;
  }

  DrillsPlace drillsPlace() {
    return places.drills();
  }

  LettersPlace lettersPlace() {
    return places.letters();
  }

  /** What renders and works things out. */
  Background pages() {
    return pages;
  }
}
