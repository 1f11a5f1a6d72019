package limberboard.desktop.upkeep.timeline;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import limberboard.boat.Boat;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.library.problem.Problem;
import limberboard.print.page.CutPage;
import limberboard.print.sheet.DueSheet;

/**
 * What is due and the time line of the coming seasons, as a sheet. For the event thread only.
 *
 * @param model what is due
 */
public record DuePaper(UpkeepModel model) {
  /**
   * Hands the sheet on; without effect before what is due has been worked out.
   *
   * @param to prints or saves a sheet of this name
   */
  public void give(BiConsumer<String, Supplier<CutPage>> to) {
    List<Problem> questions = model.questions();
    model
        .upkeep()
        .ifPresent(
            known ->
                to.accept(
                    "due-" + model.boat().map(Boat::id).orElse("boat"),
                    () -> DueSheet.of(known, questions, TimeLineModel.SEASONS)));
  }
}
