package limberboard.print.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import limberboard.upkeep.plan.PlanDay;
import limberboard.upkeep.plan.WorkPlan;
import limberboard.upkeep.shopping.Job;
import limberboard.upkeep.shopping.ShoppingList;
import limberboard.words.CountWords;
import limberboard.words.DayWords;

/**
 * What a shopping list is for, as its sheet says it at the top. Immutable.
 *
 * @param title of the sheet
 * @param sum for what and as of when, in a sentence
 * @param when it is shopped or needed, behind the boat's name
 */
public record ShoppingFor(String title, String sum, String when) {
  /** Work and ropes that were chosen one by one, or those of a season. */
  static ShoppingFor work(ShoppingList list) {
    String on = DayWords.of(list.fitting().on());
    return new ShoppingFor(
        "Shopping list",
        "What to get for " + wanted(list, jobs(list.jobs())) + ", as of " + on + ".",
        "for shopping on " + on);
  }

  /**
   * The work of a plan.
   *
   * @param list may leave out some of that work, and may have ropes beside it
   */
  public static ShoppingFor plan(WorkPlan plan, ShoppingList list) {
    String until = DayWords.of(plan.wish().until());
    List<String> listed = list.jobs().stream().map(Job::id).toList();
    long lines =
        plan.lines()
            .filter(
                line -> line.work().pages().stream().anyMatch(page -> listed.contains(page.id())))
            .count();
    long all = plan.lines().count();
    String of = lines == all ? "" : " of the " + all;
    String work = CountWords.of((int) lines, "piece of work", "pieces of work") + of;
    List<PlanDay> days = plan.days().stream().filter(day -> !day.lines().isEmpty()).toList();
    return new ShoppingFor(
        "Shopping for the plan until " + until,
        "What to get for "
            + wanted(list, work)
            + " on "
            + said(days.stream().map(day -> day.free().day()).toList())
            + ", by the plan of "
            + DayWords.of(plan.fitting().on())
            + ".",
        days.isEmpty() ? "" : "first needed on " + DayWords.of(days.get(0).free().day()));
  }

  /** Days in words, the year behind the last one where it is that of all. */
  private static String said(List<LocalDate> days) {
    boolean oneYear = days.stream().map(LocalDate::getYear).distinct().count() == 1;
    List<String> words = new ArrayList<>();
    for (LocalDate day : days) {
      boolean last = words.size() == days.size() - 1;
      words.add(oneYear && !last ? DayWords.withoutYear(day) : DayWords.of(day));
    }
    int most = words.size() - 1;
    return most <= 0
        ? String.join("", words)
        : String.join(", ", words.subList(0, most)) + " and " + words.get(most);
  }

  private static String wanted(ShoppingList list, String jobs) {
    String ropes = CountWords.of(list.ropes().size(), "rope", "ropes");
    if (list.ropes().isEmpty()) {
      return jobs;
    }
    return list.jobs().isEmpty() ? ropes : jobs + (jobs.contains(",") ? ", and " : " and ") + ropes;
  }

  /** How much work it is, and how often it is done in all where some is done more than once. */
  private static String jobs(List<Job> jobs) {
    int works = (int) jobs.stream().map(job -> job.work().id()).distinct().count();
    int times = jobs.stream().mapToInt(Job::times).sum();
    String count = CountWords.of(works, "piece of work", "pieces of work");
    return times == works ? count : count + ", done " + times + " times in all";
  }
}
