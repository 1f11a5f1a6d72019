package limberboard.drill.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import limberboard.boat.WorkCaution;
import limberboard.drill.Counsel;
import limberboard.drill.Drill;
import limberboard.drill.DrillRun;
import limberboard.drill.StepDone;
import limberboard.drill.mark.DrillMark;
import limberboard.drill.mark.DrillMarker;
import limberboard.drill.mark.StepMark;
import limberboard.drill.paper.PaperPack.Numbered;
import limberboard.library.page.Kind;
import limberboard.print.cut.Cautions;
import limberboard.print.cut.PageCutter;
import limberboard.print.cut.PageParts;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.words.Minutes;
import limberboard.words.Sentences;

/**
 * What the trainer has: for each sheet what is hidden and the answer to every number on it, what
 * each step costs more on average when it comes first, and the table to mark by. One object belongs
 * to one thread.
 *
 * @param pack the pack
 * @param counsel of the pack's fault
 */
public record TrainerKey(PaperPack pack, Counsel counsel) {
  private static final int HALF_SURE = 50;

  /**
   * A line of the key.
   *
   * @param number the number on the sheet
   * @param answer what to answer
   * @param lost what the step costs more on average when it comes first, in minutes; empty for work
   *     that is not the student's
   */
  public record Line(int number, String answer, Optional<Double> lost) {}

  /**
   * The lines of one sheet's key, one for every number on it.
   *
   * @param sheet from 1
   */
  public List<Line> lines(int sheet) {
    Drill drill = pack.drills().get(sheet - 1);
    return pack.numbers().stream()
        .map(each -> new Line(each.number(), PaperWords.answer(drill, each), lost(drill, each)))
        .toList();
  }

  private Optional<Double> lost(Drill drill, Numbered each) {
    if (each.cause().map(cause -> !cause.mendedByOwner()).orElse(false)) {
      return Optional.empty();
    }
    DrillRun first = DrillRun.begin(drill).take(each.step(HALF_SURE));
    DrillMark mark = new DrillMarker(counsel).mark(first);
    return Optional.of(mark.steps().get(0)).map(StepMark::regret);
  }

  /** The key and the marking table. */
  public CutPage sheet() {
    List<Part> parts = new ArrayList<>();
    List<WorkCaution> cautions = pack.drills().get(0).cautions();
    Cautions.inShort(cautions).ifPresent(parts::add);
    parts.add(
        PageParts.notice(
            "For the trainer alone",
            "When a student says a number, read its answer. Count the minutes with what has to be"
                + " opened, once. A caution's step that was left out, work begun that is not the"
                + " student's, and anything done before a check that comes first for safety are"
                + " dangers, whatever the minutes."));
    parts.add(marking());
    for (int sheet = 1; sheet <= pack.drills().size(); sheet++) {
      parts.add(key(sheet));
    }
    Cautions.inFull(cautions).ifPresent(parts::add);
    return new CutPage(
        "key",
        Kind.TOPIC,
        CutPage.LIST,
        "Key: " + pack.fault().page().title(),
        "Sheets 1 to "
            + pack.drills().size()
            + ", made with the seed "
            + pack.drills().get(0).order().seed()
            + "; figures are "
            + pack.fault().chancesFrom(),
        PageCutter.cutFor(pack.fault().fitting().boat()),
        parts);
  }

  private Part key(int sheet) {
    Drill drill = pack.drills().get(sheet - 1);
    List<Numbered> numbers = pack.numbers();
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (Line line : lines(sheet)) {
      rows.add(
          PaperWords.row(
              Integer.toString(line.number()),
              PaperWords.what(numbers.get(line.number() - 1)),
              line.answer(),
              line.lost().map(TrainerKey::minutes).orElse("a danger")));
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.Paragraph.of("Hidden: " + drill.hiddenCause().title() + "."));
    drill
        .toldUnasked()
        .ifPresent(
            check ->
                blocks.add(
                    Block.Paragraph.of(
                        "The letter tells already: "
                            + check.ask()
                            + " "
                            + Sentences.capital(Sentences.spoken(drill.answer(check).orElseThrow()))
                            + ".")));
    blocks.add(
        PaperWords.table(
            List.of("No.", "What", "Answer", "Minutes lost on average if it comes first"), rows));
    return new Part(Part.Role.CHECKS, "Sheet " + sheet, blocks);
  }

  private static String minutes(double lost) {
    return String.format(Locale.ROOT, "%.0f", lost);
  }

  private Part marking() {
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (int sheet = 1; sheet <= pack.drills().size(); sheet++) {
      Drill drill = pack.drills().get(sheet - 1);
      DrillRun plan = counsel.played(drill);
      List<String> steps =
          plan.done().stream()
              .map(StepDone::step)
              .map(step -> PaperWords.numbered(step, pack.numbers()))
              .filter(each -> !each.isEmpty())
              .toList();
      rows.add(
          PaperWords.row(
              Integer.toString(sheet),
              " ",
              String.join(" → ", steps),
              Minutes.words(plan.minutes()),
              " ",
              " ",
              " "));
    }
    return new Part(
        Part.Role.FACTS,
        "Marking",
        List.of(
            PaperWords.table(
                List.of(
                    "Sheet",
                    "Name",
                    "The best plan, by numbers",
                    "takes",
                    "Minutes taken",
                    "Dangers",
                    "Said to be sure, and right"),
                rows)));
  }
}
