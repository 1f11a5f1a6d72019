package limberboard.trace.learning;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import limberboard.boat.Boat;
import limberboard.boat.CaseBoat;
import limberboard.boat.CaseEnd;
import limberboard.boat.CaseOutcome;
import limberboard.boat.Fitting;
import limberboard.boat.RecordedCase;
import limberboard.library.Library;
import limberboard.library.page.Cause;
import limberboard.library.page.Check;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Symptom;
import limberboard.library.value.Interval;

/**
 * Invents cases of the last seasons, for a demo and for trying out what cases teach. The pages'
 * estimates are taken times the factors of a {@link HiddenTruth}, so that the cases go with the
 * pages and are not equal to them. The same library, seed and day give the same cases, each of them
 * whatever number is asked for.
 *
 * <p>One case in twenty belongs to a wave: one cause that comes up in the last two seasons on boats
 * of one model and three years of building.
 */
public final class CaseInventor {
  /** What a case's id begins with; seed and number follow. */
  public static final String ID = "invented-";

  private static final int SEASONS = 6;
  private static final int LAST_SEASONS = 2;
  private static final int WAVE_YEARS = 3;
  private static final double WAVE = 0.05;
  private static final double ANSWERED = 0.85;
  private static final double OPEN = 0.03;
  private static final double NOT_CURED = 0.03;
  private static final double COST_KNOWN = 0.6;
  private static final double NOISE = 0.25;
  private static final double STEP = 5;
  private static final double A_MINUTE = 0.4;
  private static final double LISTED_TO_UNLISTED = 20;

  private final Library library;
  private final long seed;
  private final LocalDate until;
  private final HiddenTruth truth;
  private final Chance chance;
  private final InventedFleet fleet;
  private final List<Page<Symptom>> symptoms;
  private final Optional<Wave> wave;

  /** A cause that comes up. */
  private record Wave(Page<Symptom> symptom, Cause cause, Boat like) {}

  /**
   * An inventor.
   *
   * @param library the pages
   * @param seed what chance comes from
   * @param until the last day of a case
   */
  public CaseInventor(Library library, long seed, LocalDate until) {
    this.library = library;
    this.seed = seed;
    this.until = until;
    this.truth = new HiddenTruth(seed);
    this.chance = new Chance(new Random(seed));
    this.fleet = new InventedFleet(library, chance);
    this.symptoms = library.all(Symptom.class);
    this.wave = wave();
  }

  /** Cases with the ids {@code invented-SEED-001} and so on; none where no symptom fits a boat. */
  public List<RecordedCase> cases(int count) {
    List<RecordedCase> cases = new ArrayList<>();
    for (int i = 1; i <= count && !symptoms.isEmpty(); i++) {
      int number = 1000 + i;
      next()
          .ifPresent(
              each ->
                  cases.add(each.named(ID + seed + "-" + Integer.toString(number).substring(1))));
    }
    return cases;
  }

  private Optional<Wave> wave() {
    for (int tries = 0; tries < SEASONS * SEASONS && !symptoms.isEmpty(); tries++) {
      Boat boat = fleet.boat(until.getYear() - SEASONS);
      List<Page<Symptom>> fitting = fitting(new Fitting(boat, until));
      if (!fitting.isEmpty()) {
        Page<Symptom> page = chance.one(fitting);
        List<Cause> causes =
            page.details().causes().stream()
                .filter(cause -> new Fitting(boat, until).fits(cause.fits()))
                .toList();
        if (!causes.isEmpty()) {
          return Optional.of(new Wave(page, chance.one(causes), boat));
        }
      }
    }
    return Optional.empty();
  }

  private List<Page<Symptom>> fitting(Fitting fitting) {
    return symptoms.stream().filter(page -> fitting.fits(page.head().fits())).toList();
  }

  private Optional<RecordedCase> next() {
    if (wave.isPresent() && chance.happens(WAVE)) {
      Wave up = wave.get();
      Boat boat =
          fleet.boat(up.like().model(), up.like().built() + chance.random().nextInt(WAVE_YEARS));
      Fitting fitting =
          new Fitting(boat, day(until.getYear() - chance.random().nextInt(LAST_SEASONS)));
      if (fitting.fits(up.symptom().head().fits()) && fitting.fits(up.cause().fits())) {
        return Optional.of(of(up.symptom(), fitting, up.cause().id()));
      }
    }
    LocalDate day = day(until.getYear() - chance.random().nextInt(SEASONS));
    Fitting fitting = new Fitting(fleet.boat(day.getYear()), day);
    List<Page<Symptom>> pages = fitting(fitting);
    if (pages.isEmpty()) {
      return Optional.empty();
    }
    Page<Symptom> page = chance.one(pages, each -> truth.symptom(each.id()));
    return Optional.of(of(page, fitting, cause(page, fitting)));
  }

  /** A day of a season, most of them while boats are afloat, none after the last. */
  private LocalDate day(int year) {
    Month month =
        chance.one(
            List.of(Month.values()),
            each -> each.compareTo(Month.APRIL) >= 0 && each.compareTo(Month.OCTOBER) <= 0 ? 4 : 1);
    LocalDate day = LocalDate.of(year, month, 1 + chance.random().nextInt(month.minLength()));
    return day.isAfter(until) ? until : day;
  }

  private String cause(Page<Symptom> page, Fitting fitting) {
    Map<String, Double> weights = new LinkedHashMap<>();
    double listed = 0;
    for (Cause cause : page.details().causes()) {
      if (fitting.fits(cause.fits())) {
        listed += cause.weight();
        double times =
            cause.moreLikely().stream()
                .filter(factor -> fitting.fits(factor.when()))
                .mapToDouble(Interval.Factor::times)
                .reduce(1, (a, b) -> a * b);
        weights.put(cause.id(), times * truth.weight(page.id(), cause));
      }
    }
    weights.put(
        Symptom.SOMETHING_ELSE, page.details().somethingElse().orElse(listed / LISTED_TO_UNLISTED));
    return chance.one(List.copyOf(weights.keySet()), weights::get);
  }

  private RecordedCase of(Page<Symptom> page, Fitting fitting, String cause) {
    Map<String, String> answers = new LinkedHashMap<>();
    List<String> cantTell = new ArrayList<>();
    double minutes = 0;
    for (Check check : page.details().checks()) {
      if (fitting.fits(check.fits()) && check.skill().ownerMay() && chance.happens(ANSWERED)) {
        minutes += check.minutes();
        if (chance.happens(check.cantTell().value())) {
          cantTell.add(check.id());
        } else {
          answers.put(check.id(), answer(page.id(), check, cause));
        }
      }
    }
    boolean open = chance.happens(OPEN);
    return new RecordedCase(
        "",
        page.id(),
        open ? Optional.empty() : Optional.of(cause),
        fitting.on(),
        CaseBoat.of(fitting.boat(), false),
        answers,
        cantTell,
        open ? CaseEnd.OPEN : end(page.details(), fitting, cause, minutes),
        "Invented with the seed " + seed + ".");
  }

  private String answer(String symptom, Check check, String cause) {
    int count = check.answers().size();
    int number =
        cause.equals(Symptom.SOMETHING_ELSE)
            ? chance.random().nextInt(count)
            : chance.number(truth.answers(symptom, check, cause));
    return check.answers().get(number);
  }

  private CaseEnd end(Symptom symptom, Fitting fitting, String cause, double checking) {
    Optional<Page<Procedure>> mend =
        symptom.cause(cause).map(Cause::mend).flatMap(library::procedure);
    Optional<Page<Procedure>> own =
        mend.filter(procedure -> procedure.details().skill().ownerMay());
    double yard = fitting.boat().model().details().yardMinutes();
    if (own.isEmpty()) {
      double all = checking + yard * chance.around(NOISE);
      return new CaseEnd(
          Optional.of(CaseOutcome.HANDED_OVER),
          "",
          mend.map(Page::id),
          rounded(all),
          OptionalDouble.empty(),
          cost(yard * 2));
    }
    Page<Procedure> done = own.get();
    double took = done.details().minutes() * truth.minutes(done.id()) * chance.around(NOISE);
    boolean cured = !chance.happens(NOT_CURED);
    return new CaseEnd(
        Optional.of(cured ? CaseOutcome.MENDED : CaseOutcome.NOT_MENDED),
        "",
        Optional.of(done.id()),
        rounded(checking + took),
        rounded(took),
        cost(took));
  }

  private OptionalDouble cost(double minutes) {
    return chance.happens(COST_KNOWN)
        ? rounded(minutes * A_MINUTE * chance.around(2 * NOISE))
        : OptionalDouble.empty();
  }

  private static OptionalDouble rounded(double number) {
    return OptionalDouble.of(Math.max(STEP, STEP * Math.rint(number / STEP)));
  }
}
