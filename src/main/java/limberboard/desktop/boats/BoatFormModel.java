package limberboard.desktop.boats;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.BoatWriter;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Observed;
import limberboard.desktop.base.Session;
import limberboard.desktop.upkeep.log.LogRow;
import limberboard.library.page.Model;
import limberboard.library.page.Model.Choice;
import limberboard.library.page.Model.Equipment;
import limberboard.library.page.Page;
import limberboard.library.problem.Problem;
import limberboard.words.Sentences;

/** What the boats place shows and does, without Swing. For the event thread only. */
public final class BoatFormModel extends Observed {
  private final Session session;
  private final BoatStore store;
  private final Background background;
  private final Notices notices;
  private final DraftSteps steps = new DraftSteps();
  private Optional<Boat> original = Optional.empty();
  private Optional<String> followed = Optional.empty();
  private boolean isNew;
  private boolean tried;
  private boolean saving;
  private Optional<Runnable> afterwards = Optional.empty();
  private Clashes clashes = Clashes.NONE;
  private Runnable reload = () -> {};
  private UnsavedQuestion question = () -> UnsavedQuestion.Answer.STAY;

  /**
   * A model on the chosen boat.
   *
   * @param session tells boats and models
   * @param store writes boats
   * @param background runs the writing
   * @param notices is told when a boat has been saved
   */
  public BoatFormModel(Session session, BoatStore store, Background background, Notices notices) {
    this.session = session;
    this.store = store;
    this.background = background;
    this.notices = notices;
    session.onChange(this::sessionChanged);
    sessionChanged();
  }

  /** Says what reads the workspace again after a boat has been saved. */
  public void afterSaving(Runnable read) {
    reload = read;
  }

  /** Says who asks about unsaved changes. */
  public void askUnsaved(UnsavedQuestion asking) {
    question = asking;
  }

  /** Whether the workspace has been read. */
  public boolean isRead() {
    return session.isRead();
  }

  /** The boats, by name. */
  public List<Boat> boats() {
    return session.workspace().boats().stream().sorted(Comparator.comparing(Boat::name)).toList();
  }

  /** The models there are. */
  public List<Page<Model>> models() {
    return session.library().all(Model.class);
  }

  /** The boat in the form as it was last saved; empty for a new one or none. */
  public Optional<Boat> original() {
    return original;
  }

  /** Whether the form is that of a new boat. */
  public boolean isNew() {
    return isNew;
  }

  /** Whether there is a form to be shown. */
  public boolean hasForm() {
    return isNew || original.isPresent();
  }

  /** What is in the form. */
  public Draft draft() {
    return steps.now();
  }

  /** The page of the form's model. */
  public Optional<Page<Model>> model() {
    return session.library().model(draft().text(Field.MODEL));
  }

  /** What can be fitted to the boat in the form. */
  public List<Equipment> equipment() {
    return equipped().choices(draft());
  }

  /** Whether a choice came only after the form's boat was built, so that it was fitted later. */
  public boolean isLater(Equipment equipment, Choice choice) {
    return equipped().isLater(draft(), equipment, choice);
  }

  private Equipped equipped() {
    return new Equipped(session.library());
  }

  /** What cannot be saved. For a new boat empty fields count only once saving has been tried. */
  public Map<Field, String> problems() {
    Map<Field, String> problems = new HashMap<>(allProblems());
    if (isNew && !tried) {
      problems.keySet().removeIf(field -> draft().text(field).isBlank());
    }
    return problems;
  }

  private Map<Field, String> allProblems() {
    return new DraftCheck(session.library(), session.workspace().boats(), original.map(Boat::id))
        .problems(draft());
  }

  /** Whether there are unsaved changes. */
  public boolean isChanged() {
    return hasForm() && steps.isChanged();
  }

  /** Opens a boat's form, asking about unsaved changes first. */
  public void open(String id) {
    Optional<Boat> boat = session.workspace().boat(id);
    if (boat.filter(found -> !found.isEntered()).isPresent()) {
      newBoat();
    } else if (boat.isPresent() && !original.map(Boat::id).equals(Optional.of(id))) {
      leave(() -> show(boat));
    }
  }

  /**
   * Opens the form of a new boat, asking about unsaved changes first; with what is known of the
   * working boat when nobody has entered her.
   */
  public void newBoat() {
    leave(
        () -> {
          show(Optional.empty(), true);
          notEntered()
              .map(boat -> Draft.of(boat).with(Field.NAME, "").with(Field.HULL, ""))
              .ifPresent(
                  draft -> {
                    steps.step(equipped().putRight(draft), Optional.empty());
                    tell();
                  });
        });
  }

  /** The working boat, when she has a file. */
  private Optional<Boat> entered() {
    return session.boat().filter(Boat::isEntered);
  }

  /** The working boat, when nobody has entered her. */
  public Optional<Boat> notEntered() {
    return session.boat().filter(boat -> !boat.isEntered());
  }

  /**
   * Whether the form may be left now; asks about unsaved changes, and saves or drops them. While
   * they are being saved it may not; what is to follow is done once they are, if that worked.
   *
   * @param then what is to follow if it may not be left now but may a little later
   */
  public boolean mayLeave(Runnable then) {
    if (saving) {
      afterwards = Optional.of(then);
      return false;
    }
    if (!isChanged()) {
      return true;
    }
    return switch (question.ask()) {
      case STAY -> false;
      case DROP -> {
        dropChanges();
        yield true;
      }
      case SAVE -> {
        save(then);
        yield false;
      }
    };
  }

  private void leave(Runnable action) {
    if (mayLeave(action)) {
      action.run();
    } else {
      tell();
    }
  }

  private void show(Optional<Boat> boat, boolean asNew) {
    original = boat;
    isNew = asNew;
    tried = false;
    clashes = Clashes.NONE;
    steps.open(boat.map(Draft::of).map(equipped()::putRight).orElse(Draft.blank()));
    tell();
  }

  private void show(Optional<Boat> boat) {
    show(boat, false);
  }

  /** Puts a text into a field. */
  public void set(Field field, String text) {
    if (text.equals(draft().text(field))) {
      return;
    }
    Draft next = draft().with(field, text);
    if (field == Field.MODEL || field == Field.BUILT) {
      next = equipped().asBuilt(next);
    }
    steps.step(next, Optional.of(field));
    tell();
  }

  /** Chooses equipment. */
  public void fit(String equipment, String choice) {
    if (!choice.equals(draft().equipment().get(equipment))) {
      Map<String, String> chosen = new LinkedHashMap<>(draft().equipment());
      chosen.put(equipment, choice);
      steps.step(draft().with(chosen), Optional.empty());
      tell();
    }
  }

  /** Whether there is a step to undo. */
  public boolean canUndo() {
    return steps.canUndo();
  }

  /** Undoes the last step: everything typed into one field, or one choice. */
  public void undo() {
    if (canUndo()) {
      steps.undo();
      tell();
    }
  }

  /** Drops everything since the last saving. */
  public void dropChanges() {
    steps.drop();
    tried = false;
    clashes = Clashes.NONE;
    if (isNew) {
      show(entered().or(() -> boats().stream().findFirst()));
    } else {
      tell();
    }
  }

  /** Saves the form if nothing in it is wrong; says whether it does. */
  public boolean save() {
    return save(() -> {});
  }

  private boolean save(Runnable then) {
    tried = true;
    Optional<Page<Model>> model = model();
    if (saving || !allProblems().isEmpty() || model.isEmpty()) {
      tell();
      return false;
    }
    Boat boat = DraftBoat.of(draft(), model.get(), original, session.workspace().boats());
    Draft written = draft();
    Optional<Boat> base = isNew ? Optional.empty() : original;
    saving = true;
    afterwards = Optional.of(then);
    tell();
    background.run(
        "Saving " + boat.name(),
        () -> store.save(session.library(), base, boat),
        outcome -> afterWriting(outcome, boat, written),
        () -> {
          saving = false;
          afterwards = Optional.empty();
          tell();
        });
    return true;
  }

  private void afterWriting(BoatWriter.Outcome outcome, Boat boat, Draft written) {
    saving = false;
    Runnable then = afterwards.orElse(() -> {});
    afterwards = Optional.empty();
    if (outcome instanceof BoatWriter.Saved saved) {
      saved(saved.boat(), boat, written);
      then.run();
    } else if (outcome instanceof BoatWriter.Clash clash) {
      clashed(clash);
    } else {
      Problem problem = ((BoatWriter.Refused) outcome).problem();
      notices.warn(boat.name() + " is not saved. " + said(problem));
      tell();
    }
  }

  private void saved(Boat boat, Boat wanted, Draft written) {
    boolean first = isNew;
    original = Optional.of(boat);
    isNew = false;
    clashes = Clashes.NONE;
    boolean typedOn = !draft().equals(written);
    steps.saved(boat.equals(wanted) ? written : Draft.of(boat));
    if (!typedOn && !boat.equals(wanted)) {
      steps.open(equipped().putRight(Draft.of(boat)));
    }
    notices.tell(boat.name() + " is saved.");
    if (first) {
      session.choose(Optional.of(boat.id()));
    }
    reload.run();
    tell();
  }

  /** Shows both versions: the form keeps its own, and says of each key what the file has. */
  private void clashed(BoatWriter.Clash clash) {
    original = Optional.of(clash.theirs());
    clashes = Clashes.of(clash);
    Draft mine = equipped().putRight(Draft.of(clash.merged()));
    steps.open(equipped().putRight(Draft.of(clash.theirs())));
    steps.step(mine, Optional.empty());
    notices.warn(clashes.sentence(clash.theirs().name()));
    tell();
  }

  private static String said(Problem problem) {
    String right = problem.right();
    return "The file "
        + problem.file()
        + (problem.line() > 0 ? ", line " + problem.line() + "," : "")
        + " "
        + problem.wrong()
        + "."
        + (right.isEmpty() ? "" : " " + Sentences.capital(right) + ".");
  }

  /** Whether the form is being saved. */
  public boolean isSaving() {
    return saving;
  }

  /** What somebody else wrote into the file where the form says something else. */
  public Clashes clashes() {
    return clashes;
  }

  /** Puts what the file has into a field that somebody else changed too. */
  public void takeTheirs(Field field) {
    original.ifPresent(boat -> set(field, Draft.of(boat).text(field)));
  }

  private void sessionChanged() {
    if (!isChanged() && !isNew) {
      Optional<Boat> shown = original.map(Boat::id).flatMap(session.workspace()::boat);
      Optional<Boat> wanted = following() ? entered().or(() -> shown) : shown;
      show(wanted.or(() -> boats().stream().findFirst()).or(() -> original));
    } else {
      tell();
    }
  }

  /** Whether another boat has just been chosen for the whole window. */
  private boolean following() {
    Optional<String> chosen = session.boat().map(Boat::id);
    boolean changed = !chosen.equals(followed);
    followed = chosen;
    return changed || original.isEmpty();
  }

  /** Makes the boat in the form the one that everything is about. */
  public void chooseForAll() {
    original.ifPresent(boat -> session.choose(Optional.of(boat.id())));
  }

  /** Whether the boat in the form is the one that everything is about. */
  public boolean isChosenForAll() {
    return original.isPresent() && session.boat().map(Boat::id).equals(original.map(Boat::id));
  }

  /** The boat's log in words, the newest first; empty for a new boat. */
  List<LogRow> log() {
    return LogRow.of(session.library(), original.map(Boat::log).orElse(List.of()));
  }
}
