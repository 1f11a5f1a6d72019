package limberboard.proofread.rule;

import java.util.ArrayList;
import java.util.List;
import limberboard.proofread.file.TradeWords;
import limberboard.proofread.text.ReadWork;

/** Work that needs a tool or an access which is not listed: a torque without a torque wrench. */
final class NoTool implements WorkRule {
  private static final int REACH = 3;

  @Override
  public String name() {
    return "no-tool";
  }

  @Override
  public List<PageRemark> in(ReadWork job, Surroundings around) {
    List<PageRemark> found = new ArrayList<>();
    for (TradeWords.Need need : around.words().needs()) {
      boolean met =
          need.tools().stream().anyMatch(job::lists)
              || need.access().stream().anyMatch(job.access()::contains);
      if (!met) {
        Trigger.of(need.words(), need.unless(), REACH, around)
            .firstIn(job)
            .ifPresent(place -> found.add(finding(job, place, need, around)));
      }
    }
    return found;
  }

  private PageRemark finding(
      ReadWork job, Trigger.Place place, TradeWords.Need need, Surroundings around) {
    boolean tool = !need.tools().isEmpty();
    String id = tool ? need.tools().get(0) : need.access().get(0);
    PageRemark said =
        PageRemark.at(
            this,
            Gravity.MISLEADS,
            job.page(),
            around.line(job, place.step()),
            id,
            NotListed.where(job, place.step())
                + " says “"
                + place.phrase().written()
                + "”, which takes "
                + id,
            "add " + id + " to " + (tool ? "tools" : "access"));
    return tool && need.tools().size() == 1 && NotListed.isTool(id, around)
        ? said.mendedBy(new HeaderMend.Adds(job.pointer() + "/tools", id))
        : said;
  }
}
