package limberboard.library.page;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.value.Amount;
import limberboard.library.value.Condition;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Named;
import limberboard.library.value.Names;
import limberboard.library.value.Phase;
import limberboard.library.value.Range;
import limberboard.library.value.Required;
import limberboard.library.value.Substance;
import limberboard.library.value.Within;

/**
 * One boat model.
 *
 * @param built years in which it was built
 * @param hulls its hull numbers
 * @param drawing its drawings
 * @param drawnZones zones with their outlines (key {@code zones})
 * @param equipment what can be chosen, in the order of the form
 * @param rig rig dimensions by name
 * @param measures what amounts refer to, by name
 * @param ropes its running rigging
 * @param access what it takes to reach each place
 * @param yardMinutes what handing a fault to the yard costs the owner, in minutes
 * @param yardSearchMinutes what it costs more when the yard has to look for the cause itself
 */
public record Model(
    @Required Range built,
    Optional<Range> hulls,
    @Required Drawing drawing,
    @Required @JsonProperty("zones") List<Zone> drawnZones,
    @Required List<Equipment> equipment,
    Map<String, Amount.Fixed> rig,
    Map<String, Amount.Fixed> measures,
    List<RopePlan> ropes,
    List<Access> access,
    @Within(least = 0, most = MOST_YARD_MINUTES) Integer yardMinutes,
    @Within(least = 0, most = MOST_YARD_MINUTES) Integer yardSearchMinutes)
    implements Details {

  private static final int MOST_YARD_MINUTES = 100_000;
  private static final int USUAL_YARD_MINUTES = 240;
  private static final int USUAL_SEARCHES_IN_YARD_MINUTES = 4;

  /** Absent entries get their defaults. */
  public Model {
    hulls = EmptyValues.optional(hulls);
    drawnZones = drawnZones == null ? null : EmptyValues.list(drawnZones);
    equipment = equipment == null ? null : EmptyValues.list(equipment);
    rig = EmptyValues.map(rig);
    measures = EmptyValues.map(measures);
    ropes = EmptyValues.list(ropes);
    access = EmptyValues.list(access);
    yardMinutes = yardMinutes == null ? USUAL_YARD_MINUTES : yardMinutes;
    yardSearchMinutes =
        yardSearchMinutes == null
            ? yardMinutes / USUAL_SEARCHES_IN_YARD_MINUTES
            : yardSearchMinutes;
  }

  @Override
  public Kind kind() {
    return Kind.MODEL;
  }

  /** The zone with this id. */
  public Optional<Zone> zone(String id) {
    return drawnZones.stream().filter(zone -> zone.id().equals(id)).findFirst();
  }

  /** The access with this id. */
  public Optional<Access> access(String id) {
    return access.stream().filter(entry -> entry.id().equals(id)).findFirst();
  }

  /** The equipment with this id. */
  public Optional<Equipment> equipment(String id) {
    return equipment.stream().filter(entry -> entry.id().equals(id)).findFirst();
  }

  /** What the yard fitted in this year unless asked otherwise: equipment id to choice id. */
  public Map<String, String> usualEquipment(int year) {
    Map<String, String> usual = new LinkedHashMap<>();
    for (Equipment each : equipment) {
      each.defaultFor(year).ifPresent(choice -> usual.put(each.id(), choice.id()));
    }
    return usual;
  }

  /**
   * The model's drawings, as paths relative to the page.
   *
   * @param profile seen from the side
   * @param deck seen from above
   */
  public record Drawing(
      @Required @Names(Named.PICTURE) String profile,
      @Required @Names(Named.PICTURE) String deck) {}

  /**
   * A place on the boat.
   *
   * @param id zone id, the same for all models
   * @param title what it is called
   * @param profile outline in the profile drawing's coordinates
   * @param deck outline in the deck plan's coordinates
   */
  public record Zone(
      @Required String id,
      @Required String title,
      Optional<Outline> profile,
      Optional<Outline> deck) {
    /** Absent entries become empty ones. */
    public Zone {
      profile = EmptyValues.optional(profile);
      deck = EmptyValues.optional(deck);
    }
  }

  /**
   * Something the owner could choose.
   *
   * @param id what boats refer to
   * @param title what it is called
   * @param choices what there is to choose from
   */
  public record Equipment(
      @Required String id, @Required String title, @Required List<Choice> choices) {
    /** Drops choices that could not be read. */
    public Equipment {
      choices = choices == null ? null : EmptyValues.list(choices);
    }

    /** The choices to be had for a boat built in this year. */
    public List<Choice> choicesFor(int year) {
      return choices.stream()
          .filter(c -> c.built().map(b -> b.contains(year)).orElse(true))
          .toList();
    }

    /** The choices that came only after this year: on an older boat, something fitted later. */
    public List<Choice> laterThan(int year) {
      return choices.stream()
          .filter(c -> c.built().filter(b -> year < b.from().orElse(year)).isPresent())
          .toList();
    }

    /** What a boat built in this year can have: as built, or fitted later. */
    public List<Choice> fittable(int year) {
      List<Choice> later = laterThan(year);
      List<Choice> asBuilt = choicesFor(year);
      return choices.stream().filter(c -> asBuilt.contains(c) || later.contains(c)).toList();
    }

    /** What the yard fitted in this year unless asked otherwise. */
    public Optional<Choice> defaultFor(int year) {
      return choices.stream()
          .filter(c -> c.usual().map(range -> range.contains(year)).orElse(false))
          .findFirst();
    }
  }

  /**
   * One of the things that can be fitted.
   *
   * @param id what conditions refer to
   * @param title what it is called
   * @param built years for which it could be had; empty: all
   * @param usual years in which the yard fitted it unless asked otherwise (key {@code default})
   * @param madeOf what it is made of, as far as it decides what may touch it
   */
  public record Choice(
      @Required String id,
      @Required String title,
      Optional<Range> built,
      @JsonProperty("default") Optional<Range> usual,
      List<Substance> madeOf) {
    /** Absent entries become empty ones. */
    public Choice {
      built = EmptyValues.optional(built);
      usual = EmptyValues.optional(usual);
      madeOf = EmptyValues.list(madeOf);
    }
  }

  /**
   * What must be opened, lifted, lowered or hauled out before a place can be reached.
   *
   * @param id what checks and procedures refer to
   * @param title what is done
   * @param minutes how long it takes, once what it needs is done; 0 to 10 000
   * @param needs ids of what must be done before it
   * @param fits on which boats it is needed
   * @param openIn phases in which it stands open anyway, so that nobody has to do it
   */
  public record Access(
      @Required String id,
      @Required String title,
      @Required Double minutes,
      List<String> needs,
      Condition fits,
      List<Phase> openIn) {
    /** Absent entries become empty ones. */
    public Access {
      needs = EmptyValues.list(needs);
      fits = EmptyValues.condition(fits);
      openIn = EmptyValues.list(openIn);
    }
  }
}
