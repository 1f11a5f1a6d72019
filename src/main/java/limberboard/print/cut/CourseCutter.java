package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import limberboard.boat.Boat;
import limberboard.boat.NotEntered;
import limberboard.library.page.Course;
import limberboard.library.page.Page;
import limberboard.print.page.Block;
import limberboard.print.page.Block.Side;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.words.Minutes;
import limberboard.words.Sentences;

/**
 * Cuts a course: for whom, how long, its drills in order, its text. What is hidden in the drills
 * and what is taught at them stands on no page: students read it too.
 */
final class CourseCutter {
  private final CutContext cutting;

  CourseCutter(CutContext cutting) {
    this.cutting = cutting;
  }

  List<Part> cut(Page<Course> page) {
    PageParts parts = new PageParts(cutting);
    List<Part> cut = new ArrayList<>();
    Cautions.part(cutting.cautions().of(page)).ifPresent(cut::add);
    parts.fit(page).ifPresent(cut::add);
    cut.add(new Part(Part.Role.FACTS, "", List.of(InBrief.named(facts(page.details())))));
    BodyCutter.part("", new BodyCutter(cutting).cut(page)).ifPresent(cut::add);
    cut.add(new Part(Part.Role.TABLES, "The drills", List.of(drills(page.details()))));
    parts.leftOut().ifPresent(cut::add);
    parts.sources(page).ifPresent(cut::add);
    return cut;
  }

  private static List<Block.Fact> facts(Course course) {
    return List.of(
        Block.Fact.of("For", course.learners()),
        Block.Fact.of("Time", Minutes.words(course.drillMinutes() + course.otherMinutes())),
        Block.Fact.of("Drills", Minutes.words(course.drillMinutes())));
  }

  private Block drills(Course course) {
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (Course.Lesson drill : course.drills()) {
      rows.add(
          List.of(
              Inline.text(Integer.toString(rows.size() + 1)),
              symptom(drill.symptom()),
              Inline.text(boat(drill.boat())),
              Inline.text(Minutes.words(drill.minutes()))));
    }
    return new Block.Table(
        List.of(Side.RIGHT, Side.LEFT, Side.LEFT, Side.RIGHT),
        List.of("No.", "Symptom", "Boat", "In class").stream().map(Inline::text).toList(),
        rows);
  }

  private List<Inline> symptom(String id) {
    return cutting
        .library()
        .symptom(id)
        .<List<Inline>>map(page -> List.of(new Inline.PageLink(id, Inline.text(page.title()))))
        .orElseGet(() -> Inline.text(id));
  }

  private String boat(String id) {
    return NotEntered.of(id, cutting.library())
        .map(Boat::name)
        .orElseGet(() -> Sentences.capital(id));
  }
}
