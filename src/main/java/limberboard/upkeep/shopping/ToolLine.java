package limberboard.upkeep.shopping;

import java.util.List;
import limberboard.library.page.Material;
import limberboard.library.page.Page;

/**
 * A tool to have at hand.
 *
 * @param tool the tool's page
 * @param jobs which jobs need it, in the order of the list
 */
public record ToolLine(Page<Material> tool, List<Job> jobs) {
  /** Copies the list. */
  public ToolLine {
    jobs = List.copyOf(jobs);
  }

  /** Titles of the jobs that need it, each once. */
  public List<String> work() {
    return jobs.stream().map(job -> job.work().title()).distinct().toList();
  }
}
