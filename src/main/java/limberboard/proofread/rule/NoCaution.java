package limberboard.proofread.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.library.page.Caution;
import limberboard.library.page.Page;
import limberboard.proofread.file.TradeWords;
import limberboard.proofread.text.ReadWork;

/** Words of steps, or a place, that call for a caution which the page does not carry. */
final class NoCaution implements WorkRule {
  private static final int REACH = 2;

  @Override
  public String name() {
    return "no-caution";
  }

  @Override
  public List<PageRemark> in(ReadWork job, Surroundings around) {
    List<PageRemark> found = new ArrayList<>();
    for (TradeWords.Call call : around.words().cautions()) {
      if (call.carry().stream().noneMatch(job.cautions()::contains)) {
        at(job, call, around)
            .or(() -> first(job, call, around))
            .ifPresent(bite -> found.add(finding(job, call, bite, around)));
      }
    }
    return found;
  }

  private PageRemark finding(ReadWork job, TradeWords.Call call, Bite bite, Surroundings around) {
    String id = call.carry().get(0);
    boolean grave =
        around.library().caution(id).map(Page::details).map(Caution::grave).orElse(false);
    PageRemark said =
        PageRemark.at(
            this,
            grave ? Gravity.HURTS : Gravity.MISLEADS,
            job.page(),
            bite.line(),
            id,
            bite.said()
                + ", and the page does not warn of "
                + around.title(id).toLowerCase(java.util.Locale.ROOT),
            "add " + id + " to cautions");
    boolean certain = call.carry().size() == 1 && around.library().caution(id).isPresent();
    return certain ? said.mendedBy(new HeaderMend.Adds(job.pointer() + "/cautions", id)) : said;
  }

  private static Optional<Bite> at(ReadWork job, TradeWords.Call call, Surroundings around) {
    return job.access().stream()
        .filter(call.access()::contains)
        .findFirst()
        .map(
            access ->
                new Bite(
                    around.line(job.page(), job.pointer() + "/access"),
                    "the work is done with access " + access));
  }

  private static Optional<Bite> first(ReadWork job, TradeWords.Call call, Surroundings around) {
    return Trigger.of(call.words(), call.unless(), REACH, around)
        .firstIn(job)
        .map(
            place ->
                new Bite(
                    around.line(job, place.step()),
                    NotListed.where(job, place.step())
                        + " says “"
                        + place.phrase().written()
                        + "”"));
  }

  /**
   * What calls for a caution.
   *
   * @param line where it stands
   * @param said what it says
   */
  private record Bite(int line, String said) {}
}
