package limberboard.desktop.drills;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import limberboard.boat.Boat;
import limberboard.desktop.base.Observed;
import limberboard.desktop.base.Session;
import limberboard.drill.Drill;
import limberboard.drill.DrillOrder;
import limberboard.drill.HiddenNumber;
import limberboard.drill.file.WorkspaceDrills;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;

/** Which drill is to be begun, without Swing. For the event thread only. */
final class DrillChoice extends Observed {
  private final Session session;
  private final LongSupplier chance;
  private Optional<String> symptom = Optional.empty();
  private Optional<OnBoat> boat = Optional.empty();
  private Hidden hidden = Hidden.BY_SEED;
  private String student = "";
  private String seed;
  private String hints = "0";
  private String why = "";

  /**
   * A boat, or one to be made up.
   *
   * @param id of the boat, or of the model
   * @param madeUp whether a boat of this model is made up by the seed
   * @param title what a person reads
   */
  record OnBoat(String id, boolean madeUp, String title) {}

  /**
   * What is hidden.
   *
   * @param cause id of the cause; empty: the seed draws it
   * @param title what a person reads
   */
  record Hidden(Optional<String> cause, String title) {
    static final Hidden BY_SEED = new Hidden(Optional.empty(), "Drawn by the seed");
  }

  /**
   * A choice.
   *
   * @param session tells the workspace and the day
   * @param chance gives another seed each time, 0 or more
   */
  DrillChoice(Session session, LongSupplier chance) {
    this.session = session;
    this.chance = chance;
    this.seed = Long.toString(chance.getAsLong());
    session.onChange(this::refresh);
    refresh();
  }

  private void refresh() {
    if (symptom.filter(id -> session.library().symptom(id).isPresent()).isEmpty()) {
      symptom = symptoms().stream().map(Page::id).findFirst();
    }
    keepBoat();
    tell();
  }

  private void keepBoat() {
    List<OnBoat> can = boats();
    boat =
        boat.filter(can::contains)
            .or(() -> can.stream().filter(this::isChosen).findFirst())
            .or(() -> can.stream().findFirst());
    hidden = hiding().contains(hidden) ? hidden : Hidden.BY_SEED;
  }

  private boolean isChosen(OnBoat each) {
    return session.chosen().filter(each.id()::equals).isPresent();
  }

  /** All symptoms, by title. */
  List<Page<Symptom>> symptoms() {
    return session.library().all(Symptom.class).stream()
        .sorted(Comparator.comparing(Page::title))
        .toList();
  }

  /** The boats that the chosen symptom is for, then the models to make one up from. */
  List<OnBoat> boats() {
    List<OnBoat> all = new ArrayList<>();
    page()
        .ifPresent(
            page -> {
              for (Boat each : drills().boats(page)) {
                all.add(new OnBoat(each.id(), false, each.name() + ", " + each.particulars()));
              }
              for (Page<Model> model : session.library().all(Model.class)) {
                all.add(new OnBoat(model.id(), true, "Made up by the seed: a " + model.title()));
              }
            });
    return all;
  }

  /**
   * What can be hidden: what the seed draws, or a cause that the trainer chooses; of a boat that is
   * still to be made up it is not known what she can have.
   */
  List<Hidden> hiding() {
    List<Hidden> all = new ArrayList<>(List.of(Hidden.BY_SEED));
    Optional<OnBoat> known = boat.filter(on -> !on.madeUp());
    if (page().isPresent() && known.isPresent()) {
      drills().causes(page().get(), known.get().id()).stream()
          .map(cause -> new Hidden(Optional.of(cause.id()), cause.title()))
          .forEach(all::add);
    }
    return all;
  }

  /** What is hidden. */
  Hidden hidden() {
    return hidden;
  }

  /** Chooses what is hidden. */
  void hide(Hidden other) {
    hidden = other;
    tell();
  }

  private WorkspaceDrills drills() {
    return new WorkspaceDrills(session.workspace(), session.today());
  }

  /** The chosen symptom. */
  Optional<Page<Symptom>> page() {
    return symptom.flatMap(session.library()::symptom);
  }

  /** The chosen boat. */
  Optional<OnBoat> boat() {
    return boat;
  }

  /** Chooses a symptom. */
  void symptom(String id) {
    symptom = Optional.of(id);
    why = "";
    keepBoat();
    tell();
  }

  /** Chooses a boat. */
  void boat(OnBoat other) {
    boat = Optional.of(other);
    why = "";
    keepBoat();
    tell();
  }

  /** Takes what the rule proposes for a student, with the reason. */
  void propose(String symptomId, String boatId, String reason) {
    symptom = Optional.of(symptomId);
    keepBoat();
    boat = boats().stream().filter(each -> each.id().equals(boatId)).findFirst().or(() -> boat);
    why = reason;
    hidden = Hidden.BY_SEED;
    anotherSeed();
  }

  /** Why this drill was proposed, or empty. */
  String why() {
    return why;
  }

  /** The student's name or number, without space around it; empty when nobody is named. */
  Optional<String> student() {
    return Optional.of(student.strip()).filter(name -> !name.isEmpty());
  }

  /** Takes what is typed for the student. */
  void student(String typed) {
    student = typed;
    why = "";
    tell();
  }

  /** What is typed for the seed. */
  String seed() {
    return seed;
  }

  /** Takes what is typed for the seed. */
  void seed(String typed) {
    seed = typed;
    tell();
  }

  /** Another drill of the same kind. */
  void anotherSeed() {
    seed = Long.toString(chance.getAsLong());
    tell();
  }

  /** What is typed for the hints. */
  String hints() {
    return hints;
  }

  /** Takes what is typed for the hints. */
  void hints(String typed) {
    hints = typed;
    tell();
  }

  /** What cannot be begun like this, in a sentence, or empty. */
  String wrong() {
    if (page().isEmpty()) {
      return session.isRead()
          ? "The library has no symptom to drill yet."
          : "Reading the library \u2026";
    } else if (number(seed, Long.MAX_VALUE).isEmpty()) {
      return "The seed is a whole number from 0, such as 7.";
    } else if (number(hints, DrillOrder.MOST_HINTS).isEmpty()) {
      return "Hints are a whole number from 0 to " + DrillOrder.MOST_HINTS + ".";
    }
    return boat.isEmpty() ? "There is no boat and no model that it could be drilled on." : "";
  }

  private static OptionalLong number(String typed, long most) {
    try {
      long number = Long.parseLong(typed.strip());
      return number < 0 || number > most ? OptionalLong.empty() : OptionalLong.of(number);
    } catch (NumberFormatException e) {
      return OptionalLong.empty();
    }
  }

  /**
   * Makes the drill, later and off the event thread.
   *
   * @throws IllegalStateException when it cannot be begun like this
   */
  Supplier<Drill> maker() {
    if (!wrong().isEmpty()) {
      throw new IllegalStateException(wrong());
    }
    WorkspaceDrills drills = drills();
    Page<Symptom> page = page().orElseThrow();
    OnBoat on = boat.orElseThrow();
    long from = number(seed, Long.MAX_VALUE).orElseThrow();
    int allowed = (int) number(hints, DrillOrder.MOST_HINTS).orElseThrow();
    OptionalInt hides =
        hidden
            .cause()
            .map(cause -> OptionalInt.of(HiddenNumber.of(page.id(), cause, from)))
            .orElse(OptionalInt.empty());
    Optional<Page<Model>> model = on.madeUp() ? session.library().model(on.id()) : Optional.empty();
    return () -> {
      String boatId = model.map(each -> drills.madeUp(page, each, from).id()).orElse(on.id());
      return drills.drill(new DrillOrder(page.id(), boatId, drills.today(), from, allowed, hides));
    };
  }
}
