package limberboard.desktop.boats;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.BoatWriter;
import limberboard.desktop.base.Session;
import limberboard.library.page.Model;
import limberboard.library.page.Model.Choice;
import limberboard.library.page.Model.Equipment;
import limberboard.library.page.Page;

/**
 * The boat in the form: as it was saved, as it stands now, what is wrong with it, and what can be
 * undone. For the event thread only.
 */
public final class EditedBoat {
  private final Session session;
  private final Runnable changed;
  private final DraftSteps steps = new DraftSteps();
  private Optional<Boat> original = Optional.empty();
  private boolean isNew;
  private boolean tried;
  private Clashes clashes = Clashes.NONE;

  /**
   * No boat yet.
   *
   * @param session tells boats and models
   * @param changed called after each change
   */
  EditedBoat(Session session, Runnable changed) {
    this.session = session;
    this.changed = changed;
  }

  /** The boat in the form as it was last saved; empty for a new one or none. */
  public Optional<Boat> original() {
    return original;
  }

  /** Whether the form is that of a new boat. */
  public boolean isNew() {
    return isNew;
  }

  /** Whether the boat, as saved, was bought and her log says nothing of what others did. */
  public boolean isToBegin() {
    return original
        .filter(boat -> boat.bought().isPresent())
        .filter(boat -> boat.log().stream().noneMatch(entry -> entry.known().isPresent()))
        .isPresent();
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
    return new DraftCheck(
            session.library(), session.workspace().boats(), session.today(), original.map(Boat::id))
        .problems(draft());
  }

  /** Whether there are unsaved changes. */
  public boolean isChanged() {
    return hasForm() && steps.isChanged();
  }

  /** Puts a text into a field. */
  public void set(Field field, String text) {
    if (text.equals(draft().text(field))) {
      return;
    }
    Draft next = draft().with(field, text);
    if (field == Field.MODEL || field == Field.BUILT) {
      boolean otherModel = field == Field.MODEL;
      next = equipped().asBuilt(otherModel ? next.with(Map.of()) : next);
    }
    steps.step(next, Optional.of(field));
    changed.run();
  }

  /** Chooses equipment. */
  public void fit(String equipment, String choice) {
    if (!choice.equals(draft().equipment().get(equipment))) {
      Map<String, String> chosen = new LinkedHashMap<>(draft().equipment());
      chosen.put(equipment, choice);
      steps.step(draft().with(chosen), Optional.empty());
      changed.run();
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
      changed.run();
    }
  }

  /** What somebody else wrote into the file where the form says something else. */
  public Clashes clashes() {
    return clashes;
  }

  /** Puts what the file has into a field that somebody else changed too. */
  public void takeTheirs(Field field) {
    original.ifPresent(boat -> set(field, Draft.of(boat).text(field)));
  }

  /** Shows a boat as it was saved, or a new one. */
  void open(Optional<Boat> boat, boolean asNew) {
    original = boat;
    isNew = asNew;
    tried = false;
    clashes = Clashes.NONE;
    steps.open(boat.map(Draft::of).map(equipped()::putRight).orElse(Draft.blank()));
    changed.run();
  }

  /** Takes over what is known of a boat that nobody has entered. */
  void likeUnknown(Boat boat) {
    Draft draft = Draft.of(boat).with(Field.NAME, "").with(Field.HULL, "");
    steps.step(equipped().putRight(draft), Optional.empty());
    changed.run();
  }

  /** Goes back to what was saved. */
  void drop() {
    steps.drop();
    tried = false;
    clashes = Clashes.NONE;
  }

  /** Whether nothing in it is wrong; from now on empty fields count too. */
  boolean mayBeSaved() {
    tried = true;
    return allProblems().isEmpty();
  }

  /**
   * Notes what has been saved.
   *
   * @param boat as it is in the file now
   * @param wanted as it was to be written
   * @param written the form that was written; what has been typed since stays
   */
  void saved(Boat boat, Boat wanted, Draft written) {
    original = Optional.of(boat);
    isNew = false;
    clashes = Clashes.NONE;
    boolean typedOn = !draft().equals(written);
    steps.saved(boat.equals(wanted) ? written : Draft.of(boat));
    if (!typedOn && !boat.equals(wanted)) {
      steps.open(equipped().putRight(Draft.of(boat)));
    }
  }

  /** Shows both versions: the form keeps its own, and says of each key what the file has. */
  void clashed(BoatWriter.Clash clash) {
    original = Optional.of(clash.theirs());
    clashes = Clashes.of(clash);
    Draft mine = equipped().putRight(Draft.of(clash.merged()));
    steps.open(equipped().putRight(Draft.of(clash.theirs())));
    steps.step(mine, Optional.empty());
  }
}
