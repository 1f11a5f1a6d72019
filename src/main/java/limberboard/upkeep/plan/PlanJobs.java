package limberboard.upkeep.plan;

import java.util.ArrayList;
import java.util.List;
import limberboard.upkeep.shopping.Job;

/** The work of a plan as jobs to shop for. */
public final class PlanJobs {
  private PlanJobs() {}

  /** One job for each page that is worked from, on its day. Looking again takes nothing. */
  public static List<Job> of(WorkPlan plan) {
    List<Job> jobs = new ArrayList<>();
    for (PlanDay day : plan.days()) {
      day.lines().stream()
          .filter(line -> !line.work().dues().get(0).isLookAgain())
          .flatMap(line -> line.work().dues().get(0).all().stream())
          .forEach(due -> jobs.add(new Job(due.work(), 1, day.free().day(), due.isLookFirst())));
    }
    return List.copyOf(jobs);
  }
}
