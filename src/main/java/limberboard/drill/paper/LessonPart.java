package limberboard.drill.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import limberboard.drill.Counsel;
import limberboard.drill.Drill;
import limberboard.drill.DrillReply;
import limberboard.drill.DrillRun;
import limberboard.drill.DrillStep;
import limberboard.drill.StepDone;
import limberboard.drill.file.CourseLesson;
import limberboard.drill.mark.DrillMark;
import limberboard.drill.mark.DrillMarker;
import limberboard.drill.paper.PaperPack.Numbered;
import limberboard.print.cut.Cautions;
import limberboard.print.page.Block;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.words.Minutes;
import limberboard.words.Sentences;

/**
 * One drill on the trainer's sheets of a course: what to say before, what is hidden, the answers,
 * the best plan, what to say after.
 *
 * @param lesson the drill
 */
record LessonPart(CourseLesson lesson) {

  Part part() {
    List<Block> blocks = new ArrayList<>();
    said("Before", lesson.asked().teach().before(), blocks);
    lesson.drill().ifPresent(drill -> drill(drill, blocks));
    lesson
        .wrong()
        .ifPresent(
            wrong ->
                blocks.add(
                    new Block.Notice(
                        Inline.text(
                            "Cannot be played here: " + wrong.wrong() + "; " + wrong.right()))));
    said("After", lesson.asked().teach().after(), blocks);
    return new Part(
        Part.Role.CHECKS,
        lesson.number()
            + ". "
            + lesson.drill().map(LessonPart::title).orElse(lesson.asked().symptom())
            + ", "
            + Minutes.words(lesson.asked().minutes()),
        blocks);
  }

  private static String title(Drill drill) {
    return drill.fault().page().title() + ", " + drill.fault().fitting().boat().name();
  }

  private static void said(String when, List<String> paragraphs, List<Block> blocks) {
    String before = when + ": ";
    for (String each : paragraphs) {
      blocks.add(named(before, each));
      before = "";
    }
  }

  private static Block named(String name, String text) {
    return name.isEmpty()
        ? Block.Paragraph.of(text)
        : new Block.Paragraph(List.of(new Inline.Strong(Inline.text(name)), new Inline.Text(text)));
  }

  private static void drill(Drill drill, List<Block> blocks) {
    Cautions.titles(drill.cautions())
        .ifPresent(titles -> blocks.add(named("Cautions: ", titles + ".")));
    blocks.add(new Block.Quote(List.of(Block.Paragraph.of(String.join(" ", drill.letter())))));
    blocks.add(named("Hidden: ", drill.hiddenCause().title() + "."));
    blocks.add(answers(drill));
    Counsel counsel = new Counsel(drill.fault());
    DrillRun plan = counsel.played(drill);
    DrillMark mark = new DrillMarker(counsel).mark(plan);
    blocks.add(
        Block.Paragraph.of(
            "The best plan takes "
                + Minutes.words(plan.minutes())
                + " on the boat with this fault, "
                + Minutes.words(mark.expected())
                + " on average over all faults (an estimate"
                + doubt(mark)
                + "):"));
    blocks.add(Block.Items.dotted(steps(plan)));
  }

  private static String doubt(DrillMark mark) {
    return mark.doubt() < 1
        ? ""
        : String.format(Locale.ROOT, ", the planner is within %.0f min", mark.doubt());
  }

  private static Block answers(Drill drill) {
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (Numbered each : new PaperPack(drill.fault(), List.of(drill)).numbers()) {
      rows.add(
          PaperWords.row(
              Integer.toString(each.number()),
              PaperWords.what(each),
              PaperWords.answer(drill, each)));
    }
    return PaperWords.table(List.of("No.", "What", "Answer"), rows);
  }

  private static List<List<Inline>> steps(DrillRun plan) {
    List<List<Inline>> steps = new ArrayList<>();
    for (StepDone each : plan.done()) {
      if (each.reply().kind() != DrillReply.Kind.HEEDED) {
        steps.add(
            Inline.text(
                what(plan.drill(), each.step())
                    + " "
                    + said(each.reply())
                    + " ("
                    + Minutes.words(each.minutes())
                    + ")"));
      }
    }
    return steps;
  }

  private static String said(DrillReply reply) {
    return reply.kind() == DrillReply.Kind.ANSWER
        ? Sentences.capital(Sentences.spoken(reply.said()))
        : reply.said();
  }

  /** What a step of the best plan is, with its number on the sheets. */
  private static String what(Drill drill, DrillStep step) {
    List<Numbered> numbers = new PaperPack(drill.fault(), List.of(drill)).numbers();
    String number = PaperWords.numbered(step, numbers);
    if (step instanceof DrillStep.Ask || step instanceof DrillStep.Mend) {
      String what = PaperWords.what(numbers.get(Integer.parseInt(number) - 1));
      return "No. " + number + ": " + (step instanceof DrillStep.Ask ? what : what + ".");
    }
    return Sentences.capital(number) + ":";
  }
}
