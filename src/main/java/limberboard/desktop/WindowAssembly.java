package limberboard.desktop;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.JComponent;
import limberboard.boat.Boat;
import limberboard.desktop.base.Activity;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Memory;
import limberboard.desktop.base.Navigator;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Place;
import limberboard.desktop.base.Session;
import limberboard.desktop.base.Settings;
import limberboard.desktop.boats.BoatFormModel;
import limberboard.desktop.boats.BoatsPlace;
import limberboard.desktop.find.Found;
import limberboard.desktop.find.SearchField;
import limberboard.desktop.find.SearchModel;
import limberboard.desktop.help.Guide;
import limberboard.desktop.help.HelpPlace;
import limberboard.desktop.look.Theme;
import limberboard.desktop.pages.PagesModel;
import limberboard.desktop.pages.PagesPlace;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.read.CutReader;
import limberboard.desktop.read.PagePictures;
import limberboard.desktop.read.PageRenderer;
import limberboard.desktop.read.Papers;
import limberboard.desktop.read.SheetReader;
import limberboard.desktop.trace.Aspects;
import limberboard.desktop.trace.KeptTraces;
import limberboard.desktop.trace.TraceModel;
import limberboard.desktop.trace.TracePlace;
import limberboard.desktop.trace.WhyModel;
import limberboard.desktop.tree.TreeModel;
import limberboard.desktop.upkeep.UpkeepPlace;
import limberboard.desktop.upkeep.WorkNotes;
import limberboard.desktop.upkeep.entry.LogModel;
import limberboard.desktop.upkeep.log.MendedEntry;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.desktop.upkeep.state.UpkeepTools;
import limberboard.desktop.window.Actions;
import limberboard.desktop.window.MainWindow;
import limberboard.library.file.UserFolders;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.picture.Pictures;

/** Puts the window together: models, places, strip, and the ways between them. */
final class WindowAssembly {
  private final WindowServices outside;
  private final Settings settings;
  private final Activity activity = new Activity();
  private final Notices notices;
  private final Background library;
  private final Background pages;
  private final Session session;
  private final SearchModel search;
  private final TraceModel trace;
  private final Aspects aspects;
  private final PagesModel reading;
  private final UpkeepModel upkeep;
  private final LogModel log;
  private final BoatFormModel boats;
  private final Loader loader;
  private final Place tracePlace;
  private final Place pagesPlace;
  private final UpkeepPlace upkeepPlace;
  private final Place boatsPlace;
  private final HelpPlace helpPlace;
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
    this.session = new Session(outside.clock(), outside.memory().text("boat"));
    this.search =
        new SearchModel(session, background(outside.threads().search()), outside.typing());
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
    this.boats = new BoatFormModel(session, outside.boats(), library, notices);
    this.loader = new Loader(outside.reader(), outside.index(), library, session, search);
    Pictures pictures = Pictures.in(outside.folders());
    PagePictures drawings = new PagePictures(pictures);
    PageRenderer renderer = new PageRenderer(pictures, outside.guard());
    this.tracePlace = trace(drawings, renderer);
    this.pagesPlace = pages(renderer);
    this.upkeepPlace = upkeep(renderer);
    this.boatsPlace = new BoatsPlace(boats, drawings, new Latest(pages), dividers());
    boats.afterSaving(loader::load);
    log.afterWriting(loader::load);
    session.onChange(this::rememberBoat);
    new VanishedBoat(session, notices);
    this.helpPlace = help(renderer);
    this.window =
        new MainWindow(
            name(outside.folders()),
            actions(),
            session,
            settings,
            outside.memory(),
            activity,
            notices,
            new SearchField(search, this::open),
            List.of(tracePlace, pagesPlace, upkeepPlace, boatsPlace, helpPlace));
    boats.onChange(() -> window.unsaved(unsaved()));
    wayBack();
  }

  /** The boat whose form has changes that are not saved. */
  private Optional<String> unsaved() {
    return boats.isChanged() ? boats.original().map(Boat::id) : Optional.empty();
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

  private static String name(WorkspaceFolders folders) {
    Path last = folders.root().getFileName();
    return last == null ? folders.root().toString() : last.toString();
  }

  private HelpPlace help(PageRenderer renderer) {
    return new HelpPlace(
        Guide.packed(), follow -> new SheetReader(settings, renderer, pages, follow), dividers());
  }

  /** Says who opens other workspaces. */
  void opener(Opener other) {
    opener = other;
  }

  private Actions actions() {
    return new Actions() {
      @Override
      public void newBoat() {
        navigator().newBoat();
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
      public void help(String place) {
        helpPlace.openFor(place);
        window.go(helpPlace);
      }

      @Override
      public void about() {
        String text = new About(About.builtVersion(), outside.folders(), UserFolders.here()).text();
        window.tell("About Limberboard", text);
      }
    };
  }

  private Background background(java.util.concurrent.Executor worker) {
    return new Background(worker, outside.threads().event(), activity, notices);
  }

  private Place trace(PagePictures drawings, PageRenderer renderer) {
    return TracePlace.make(
        session,
        trace,
        aspects,
        pages,
        drawings,
        reader(renderer, navigator()::openPage),
        navigator(),
        new MendedEntry(upkeep, log),
        outside.clipboard().andThen(text -> notices.tell("Copied.")),
        reply -> {
          outside.copied().accept(reply);
          notices.tell("The answer is copied: paste it into your letter.");
        },
        dividers());
  }

  private Place pages(PageRenderer renderer) {
    return new PagesPlace(
        reading,
        reader(renderer, reading::open).withFoot(),
        outside.folders(),
        new Latest(pages),
        new WorkNotes(upkeep),
        navigator(),
        dividers());
  }

  private UpkeepPlace upkeep(PageRenderer renderer) {
    return UpkeepPlace.make(
        new UpkeepTools(
            upkeep,
            log,
            pages,
            papers(renderer),
            () -> new SheetReader(settings, renderer, pages, id -> navigator().openPage(id)),
            notices,
            navigator(),
            dividers()));
  }

  private CutReader reader(PageRenderer renderer, java.util.function.Consumer<String> follow) {
    return new CutReader(session, settings, renderer, pages, papers(renderer), follow);
  }

  private Papers papers(PageRenderer renderer) {
    return new Papers(renderer, pages, notices, outside.outlets());
  }

  private Divider.Memory dividers() {
    Memory memory = outside.memory();
    return new Divider.Memory() {
      @Override
      public OptionalInt place(String key) {
        int place = memory.number("divider-" + key, 50, 950, -1);
        return place < 0 ? OptionalInt.empty() : OptionalInt.of(place);
      }

      @Override
      public void remember(String key, int thousandths) {
        memory.remember("divider-" + key, Integer.toString(thousandths));
      }
    };
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

  private void open(Found found) {
    if (found.target() instanceof Found.BoatTarget boat) {
      session.choose(Optional.of(boat.id()));
      session.boat().filter(Boat::isEntered).ifPresentOrElse(this::showBoat, this::showTrace);
    } else if (found.target() instanceof Found.MentionedBoat boat) {
      session.choose(Optional.of(boat.id()));
    } else if (found.target() instanceof Found.SymptomTarget symptom && symptom.fits()) {
      navigator().trace(symptom.id());
    } else {
      navigator().openPage(found.target().id());
    }
  }

  private void showBoat(Boat boat) {
    navigator().openBoat(boat.id());
  }

  private void showTrace() {
    window.go(tracePlace);
  }

  /** The ways between the places. */
  Navigator navigator() {
    return new Navigator() {
      @Override
      public void openPage(String id) {
        reading.open(id);
        window.go(pagesPlace);
      }

      @Override
      public void trace(String symptom) {
        if (trace.start(symptom)) {
          window.go(tracePlace);
        } else {
          openPage(symptom);
        }
      }

      @Override
      public void openBoat(String id) {
        boats.open(id);
        window.go(boatsPlace);
      }

      @Override
      public void logWork(String page) {
        upkeepPlace.logWork(page);
        window.go(upkeepPlace);
      }

      @Override
      public void newBoat() {
        window.go(boatsPlace);
        boats.newBoat();
      }
    };
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

  UpkeepPlace upkeepPlace() {
    return upkeepPlace;
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
    return List.of(tracePlace, pagesPlace, upkeepPlace, boatsPlace, helpPlace).stream()
        .filter(place -> place.id().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
