package limberboard.desktop.boats;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.BoatWriter;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Observed;
import limberboard.desktop.base.Session;
import limberboard.desktop.upkeep.log.LogRow;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.problem.Problem;
import limberboard.words.Sentences;

/** What the boats place shows and does, without Swing. For the event thread only. */
public final class BoatFormModel extends Observed {
  private final Session session;
  private final BoatStore store;
  private final Background background;
  private final Notices notices;
  private final EditedBoat form;
  private Optional<String> followed = Optional.empty();
  private Optional<String> entered = Optional.empty();
  private Optional<String> awaited = Optional.empty();
  private boolean saving;
  private Optional<Runnable> afterwards = Optional.empty();
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
    this.form = new EditedBoat(session, this::tell);
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

  /** The boat in the form. */
  public EditedBoat form() {
    return form;
  }

  /** Opens a boat's form, asking about unsaved changes first. */
  public void open(String id) {
    Optional<Boat> boat = session.workspace().boat(id);
    if (boat.filter(found -> !found.isEntered()).isPresent()) {
      newBoat();
    } else if (boat.isPresent() && !form.original().map(Boat::id).equals(Optional.of(id))) {
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
          form.open(Optional.empty(), true);
          notEntered().ifPresent(form::likeUnknown);
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
    if (!form.isChanged()) {
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

  private void show(Optional<Boat> boat) {
    form.open(boat, false);
  }

  /** Drops everything since the last saving. */
  public void dropChanges() {
    form.drop();
    if (form.isNew()) {
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
    Optional<Page<Model>> model = form.model();
    if (!form.mayBeSaved() || saving || model.isEmpty()) {
      tell();
      return false;
    }
    Boat boat =
        DraftBoat.of(form.draft(), model.get(), form.original(), session.workspace().boats());
    Draft written = form.draft();
    Optional<Boat> base = form.isNew() ? Optional.empty() : form.original();
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
      form.clashed(clash);
      notices.warn(form.clashes().sentence(clash.theirs().name()));
      tell();
    } else {
      Problem problem = ((BoatWriter.Refused) outcome).problem();
      notices.warn(boat.name() + " is not saved. " + said(problem));
      tell();
    }
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

  private void saved(Boat boat, Boat wanted, Draft written) {
    boolean first = form.isNew();
    form.saved(boat, wanted, written);
    notices.tell(boat.name() + " is saved.");
    if (first) {
      entered = Optional.of(boat.id());
      awaited = entered;
      session.choose(Optional.of(boat.id()));
    }
    reload.run();
    tell();
  }

  /** Whether the boat in the form is new since this was last asked. */
  boolean isJustEntered() {
    boolean just = entered.isPresent() && form.original().map(Boat::id).equals(entered);
    if (just) {
      entered = Optional.empty();
    }
    return just;
  }

  /** Whether the form is being saved. */
  public boolean isSaving() {
    return saving;
  }

  /** Whether the boat in the form was saved and the workspace has not been read since. */
  private boolean isAwaited() {
    awaited = awaited.filter(id -> session.workspace().boat(id).isEmpty());
    return awaited.isPresent() && form.original().map(Boat::id).equals(awaited);
  }

  private void sessionChanged() {
    if (isAwaited()) {
      tell();
    } else if (!form.isChanged() && !form.isNew()) {
      Optional<Boat> shown = form.original().map(Boat::id).flatMap(session.workspace()::boat);
      Optional<Boat> wanted = following() ? entered().or(() -> shown) : shown;
      show(wanted.or(() -> boats().stream().findFirst()).or(() -> form.original()));
    } else {
      tell();
    }
  }

  /** Whether another boat has just been chosen for the whole window. */
  private boolean following() {
    Optional<String> chosen = session.boat().map(Boat::id);
    boolean changed = !chosen.equals(followed);
    followed = chosen;
    return changed || form.original().isEmpty();
  }

  /** Makes the boat in the form the one that everything is about. */
  public void chooseForAll() {
    form.original().ifPresent(boat -> session.choose(Optional.of(boat.id())));
  }

  /** Whether the boat in the form is the one that everything is about. */
  public boolean isChosenForAll() {
    return form.original().isPresent()
        && session.boat().map(Boat::id).equals(form.original().map(Boat::id));
  }

  /** The boat's log in words, the newest first; empty for a new boat. */
  List<LogRow> log() {
    return LogRow.of(session.library(), form.original().map(Boat::log).orElse(List.of()));
  }
}
