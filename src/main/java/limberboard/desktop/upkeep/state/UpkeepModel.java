package limberboard.desktop.upkeep.state;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.BoatQuestions;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Observed;
import limberboard.desktop.base.Session;
import limberboard.library.Library;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Procedure;
import limberboard.library.problem.Problem;
import limberboard.upkeep.Upkeep;
import limberboard.words.DayText;

/** What is due on the chosen boat on a day, without Swing. For the event thread only. */
public final class UpkeepModel extends Observed {
  private final Session session;
  private final Latest latest;
  private final WorkspaceFolders folders;
  private Optional<LocalDate> chosen = Optional.empty();
  private String refusedDay = "";
  private Optional<Asked> asked = Optional.empty();
  private Optional<Reckoned> reckoned = Optional.empty();

  /**
   * A model that follows the session.
   *
   * @param session tells library and boat, and what day it is
   * @param background works out what is due
   * @param folders where the boats' files lie
   */
  public UpkeepModel(Session session, Background background, WorkspaceFolders folders) {
    this.session = session;
    this.latest = new Latest(background);
    this.folders = folders;
    session.onChange(this::follow);
    follow();
  }

  /** How far it has come. */
  public enum State {
    /** The library is being read. */
    READING,
    /** No boat is chosen. */
    NO_BOAT,
    /** It is being worked out for the first time. */
    WORKING,
    /** There is something to show. */
    READY
  }

  private record Asked(Workspace workspace, String boat, LocalDate day) {
    boolean isSame(Asked other) {
      return workspace == other.workspace && boat.equals(other.boat) && day.equals(other.day);
    }
  }

  private record Reckoned(
      Upkeep upkeep, List<Problem> questions, List<DueLine> lines, List<Work> works) {}

  /**
   * Work that can be done on the boat, with or without an interval.
   *
   * @param id its page
   * @param title what a person reads
   */
  public record Work(String id, String title) {}

  /** How far it has come. */
  public State state() {
    if (!session.isRead()) {
      return State.READING;
    } else if (asked.isEmpty()) {
      return State.NO_BOAT;
    }
    return reckoned.isEmpty() ? State.WORKING : State.READY;
  }

  /** What is due; empty until it has been worked out. */
  public Optional<Upkeep> upkeep() {
    return reckoned.map(Reckoned::upkeep);
  }

  /** What is due, in words. */
  public List<DueLine> lines() {
    return reckoned.map(Reckoned::lines).orElse(List.of());
  }

  /** All work that fits the boat, by title. */
  public List<Work> works() {
    return reckoned.map(Reckoned::works).orElse(List.of());
  }

  /** What is doubtful in the boat's own files. */
  public List<Problem> questions() {
    return reckoned.map(Reckoned::questions).orElse(List.of());
  }

  /** The chosen boat. */
  public Optional<Boat> boat() {
    return session.boat();
  }

  /** Which boat is chosen, for the whole window. */
  public Session session() {
    return session;
  }

  /** The library as last read. */
  public Library library() {
    return session.library();
  }

  /** The workspace as last read. */
  public Workspace workspace() {
    return session.workspace();
  }

  /** The day that it is. */
  public LocalDate today() {
    return session.today();
  }

  /** The day asked about: today, unless another was chosen. */
  public LocalDate day() {
    return chosen.orElseGet(session::today);
  }

  /** Asks about another day; empty for today, whichever that is. */
  public void day(Optional<LocalDate> day) {
    refusedDay = "";
    chosen = day.filter(other -> !other.equals(session.today()));
    follow();
  }

  /**
   * Asks about the day that was typed; where it is none, nothing is shown until it is put right.
   */
  public void ask(String typed) {
    DayText.Read read = read(typed);
    refusedDay = read.why();
    if (read.day().filter(on -> !on.equals(day())).isPresent()) {
      day(read.day());
    } else {
      tell();
    }
  }

  /** What a typed day is read as. */
  public DayText.Read read(String typed) {
    return new DayText(session.today()).read(typed);
  }

  /** Why what was typed last is no day; empty when it is one. */
  public String refusedDay() {
    return refusedDay;
  }

  /** Goes back to the day asked about before one was typed that is none. */
  public void forgetRefusedDay() {
    refusedDay = "";
    tell();
  }

  private void follow() {
    Optional<Asked> wanted =
        session.boat().map(boat -> new Asked(session.workspace(), boat.id(), day()));
    boolean sameBoat = wanted.map(Asked::boat).equals(asked.map(Asked::boat));
    boolean same = wanted.isPresent() && asked.filter(wanted.get()::isSame).isPresent();
    asked = wanted;
    if (!sameBoat || wanted.isEmpty()) {
      latest.drop();
      reckoned = Optional.empty();
    }
    if (wanted.isPresent() && !same) {
      work(wanted.get());
    }
    tell();
  }

  private void work(Asked wanted) {
    BoatQuestions doubts = new BoatQuestions(folders, session.today());
    Boat boat = wanted.workspace().boat(wanted.boat()).orElseThrow();
    latest.run(
        "Working out what is due",
        () -> {
          Fitting fitting = new Fitting(boat, wanted.day());
          Upkeep upkeep = Upkeep.of(wanted.workspace().library(), fitting);
          return new Reckoned(
              upkeep,
              doubts.of(wanted.workspace(), boat),
              DueLine.of(upkeep),
              works(wanted.workspace().library(), fitting));
        },
        this::take);
  }

  private static List<Work> works(Library library, Fitting fitting) {
    return library.all(Procedure.class).stream()
        .filter(page -> fitting.fits(page.head().fits()))
        .map(page -> new Work(page.id(), page.title()))
        .sorted(Comparator.comparing(Work::title))
        .toList();
  }

  private void take(Reckoned found) {
    reckoned = Optional.of(found);
    tell();
  }
}
