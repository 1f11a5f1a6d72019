package limberboard.upkeep;

import java.time.LocalDate;
import java.util.List;

/**
 * The work of a boat's coming seasons along the time axis, as a drawing and in words can show it.
 * What comes often within a season is one run instead of many days. Immutable.
 *
 * @param boat the boat's name
 * @param on the day asked about
 * @param from the axis begins here
 * @param to the axis ends here
 * @param seasons the seasons, by time
 * @param groups the work by part of the boat
 * @param later how much work with an interval comes only after these seasons
 * @param cautions titles of the cautions of this work, each once
 */
public record TimeLine(
    String boat,
    LocalDate on,
    LocalDate from,
    LocalDate to,
    List<Season> seasons,
    List<Group> groups,
    int later,
    List<String> cautions) {
  /** Copies the lists. */
  public TimeLine {
    seasons = List.copyOf(seasons);
    groups = List.copyOf(groups);
    cautions = List.copyOf(cautions);
  }

  /**
   * The forecast of a boat.
   *
   * @param upkeep what is due on her
   * @param seasons how many, this one included; at least 1
   */
  public static TimeLine of(Upkeep upkeep, int seasons) {
    return new TimeLineMaker(upkeep, seasons).make();
  }

  /**
   * One season with what is planned for it.
   *
   * @param season when she is afloat
   * @param from the first day of its work: after the haul-out before it
   * @param to the last day of its work
   * @param jobs how much work, each as often as it comes
   * @param minutes the work itself in all, without opening what is in its way
   */
  public record Season(AfloatSeason season, LocalDate from, LocalDate to, int jobs, int minutes) {}

  /**
   * The work on a part of the boat.
   *
   * @param title the part, in words
   * @param rows one for each piece of work, by the day it first comes
   */
  public record Group(String title, List<Row> rows) {
    /** Copies the list. */
    public Group {
      rows = List.copyOf(rows);
    }
  }

  /**
   * One piece of work.
   *
   * @param which as {@link Due#which}
   * @param page the page it is done by
   * @param title what it is called
   * @param note what is to be said of it in words, such as that it is overdue; or empty
   * @param overdue whether its interval is over
   * @param days when it is planned
   * @param runs when it comes often, from its first to its last day in each season
   */
  public record Row(
      WorkId which,
      String page,
      String title,
      String note,
      boolean overdue,
      List<LocalDate> days,
      List<Run> runs) {
    /** Copies the lists. */
    public Row {
      days = List.copyOf(days);
      runs = List.copyOf(runs);
    }
  }

  /**
   * Work that comes often within a season.
   *
   * @param season what the season is called
   * @param from the first day
   * @param to the last day
   * @param times how often
   */
  public record Run(String season, LocalDate from, LocalDate to, int times) {}

  /** All rows. */
  public List<Row> rows() {
    return groups.stream().flatMap(group -> group.rows().stream()).toList();
  }
}
