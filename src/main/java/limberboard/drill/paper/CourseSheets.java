package limberboard.drill.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import limberboard.boat.WorkCaution;
import limberboard.drill.Drill;
import limberboard.drill.file.CourseLesson;
import limberboard.library.page.Course;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.print.cut.Cautions;
import limberboard.print.cut.PageParts;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.words.CountWords;
import limberboard.words.Minutes;

/**
 * A course page on paper: a sheet a drill for the students, and the trainer's sheets with what is
 * hidden, what to say and what the best plan does. Immutable; the trainer's sheets take seconds to
 * make.
 *
 * @param page the course
 * @param lessons its drills
 */
public record CourseSheets(Page<Course> page, List<CourseLesson> lessons) {
  /** Copies the list. */
  public CourseSheets {
    lessons = List.copyOf(lessons);
  }

  /** The students' sheets of the drills that can be played, with the numbers of the course. */
  public List<CutPage> students() {
    return lessons.stream()
        .filter(lesson -> lesson.drill().isPresent())
        .map(lesson -> new StudentSheet(pack(lesson.drill().orElseThrow())).of(1, lesson.number()))
        .toList();
  }

  private static PaperPack pack(Drill drill) {
    return new PaperPack(drill.fault(), List.of(drill));
  }

  /** The trainer's sheets. */
  public CutPage trainer() {
    List<WorkCaution> cautions = cautions();
    List<Part> parts = new ArrayList<>();
    Cautions.inShort(cautions).ifPresent(parts::add);
    parts.add(
        PageParts.notice(
            "For the trainer alone",
            "Nothing below is for students before the drill has been gone through. When somebody"
                + " says a number, read its answer; the numbers are those of the students'"
                + " sheets."));
    parts.add(covered());
    for (CourseLesson lesson : lessons) {
      parts.add(new LessonPart(lesson).part());
    }
    Cautions.inFull(cautions).ifPresent(parts::add);
    return new CutPage(
        "trainer-" + page.id(),
        Kind.COURSE,
        CutPage.LIST,
        "Trainer's sheets: " + page.title(),
        page.head().summary(),
        "",
        parts);
  }

  /** The cautions of all drills, each as often as it says something else on another boat. */
  private List<WorkCaution> cautions() {
    Map<Object, WorkCaution> each = new LinkedHashMap<>();
    for (Drill drill : drills()) {
      for (WorkCaution caution : drill.cautions()) {
        List<String> act = caution.page().details().act();
        each.putIfAbsent(
            List.of(caution.id(), caution.rule(), caution.emergency(), caution.question(), act),
            caution);
      }
    }
    return List.copyOf(each.values());
  }

  private List<Drill> drills() {
    return lessons.stream().flatMap(lesson -> lesson.drill().stream()).toList();
  }

  private Part covered() {
    List<List<Inline>> lines =
        CourseCover.of(drills()).stream()
            .map(
                each ->
                    Inline.text(
                        each.symptom()
                            + ": "
                            + String.join("; ", each.hidden())
                            + " ("
                            + each.hidden().size()
                            + " of "
                            + CountWords.of(each.all(), "cause")
                            + ")"))
            .toList();
    int minutes = page.details().drillMinutes();
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Block.Paragraph.of(
            "Drills "
                + Minutes.words(minutes)
                + ", beginning, breaks and end "
                + Minutes.words(page.details().otherMinutes())
                + "."));
    if (!lines.isEmpty()) {
      blocks.add(Block.Items.dotted(lines));
    }
    return new Part(Part.Role.FACTS, "What is hidden", blocks);
  }
}
