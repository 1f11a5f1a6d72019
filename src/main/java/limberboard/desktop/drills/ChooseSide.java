package limberboard.desktop.drills;

import java.awt.BorderLayout;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.StackedList;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.drill.learn.Progress;
import limberboard.library.page.Course;
import limberboard.library.page.Page;
import limberboard.words.CountWords;
import limberboard.words.DayWords;
import limberboard.words.Minutes;

/**
 * Beside the form: the drills of the course that was opened, then who has been drilled here, then
 * the courses that are pages of the library.
 */
final class ChooseSide extends JPanel {
  private final transient DrillCourse course;
  private final transient DrillStudents students;
  private final transient Supplier<LocalDate> today;
  private final Wrapped title = Text.heading("");
  private final Wrapped words = Text.plain("");
  private final CardList<Object> list;

  /**
   * The side.
   *
   * @param course the course
   * @param students the students
   * @param symptoms what a symptom is called
   * @param today the day
   * @param begin begins a drill of the course
   * @param name takes a student who was chosen
   */
  ChooseSide(
      DrillCourse course,
      DrillStudents students,
      UnaryOperator<String> symptoms,
      Supplier<LocalDate> today,
      Consumer<DrillCourse.Line> begin,
      Consumer<String> name) {
    super(new BorderLayout());
    this.course = course;
    this.students = students;
    this.today = today;
    setOpaque(false);
    setBorder(BorderFactory.createEmptyBorder(0, 8, 0, 0));
    list =
        new CardList<Object>(
                "Drills of the course, students and ready courses", each -> card(each, symptoms))
            .framed()
            .onChoose(
                each -> {
                  if (each instanceof DrillCourse.Line line) {
                    begin.accept(line);
                  } else if (each instanceof Progress progress) {
                    name.accept(progress.student());
                  } else if (each instanceof Page<?> page) {
                    page.as(Course.class).ifPresent(course::open);
                  }
                });
    list.setName("drill-side");
    Column above = new Column(6).padded(0, 0, 6, 0);
    above.add(title);
    above.add(words);
    add(new StackedList(above, list, new Column(0)));
    course.onChange(this::refresh);
    students.onChange(this::refresh);
    refresh();
  }

  private void refresh() {
    List<Object> all = new ArrayList<>();
    List<String> wrong = new ArrayList<>();
    course
        .opened()
        .ifPresent(
            opened -> {
              all.addAll(opened.lines());
              wrong.addAll(opened.problems());
            });
    all.addAll(students.known());
    all.addAll(course.ready());
    wrong.addAll(students.wrong());
    title.setText(course.opened().map(DrillCourse.Opened::title).orElse("Students"));
    words.setText(
        students.known().isEmpty() && course.opened().isEmpty() && wrong.isEmpty()
            ? "Nobody has been drilled here yet. Type a name or a number, and what the drill came"
                + " to is kept for that student, on this computer alone. A symptom then comes"
                + " back after growing intervals."
            : String.join("\n", wrong));
    words.setVisible(!words.getText().isEmpty());
    list.show(all);
    revalidate();
    repaint();
  }

  private Card card(Object each, UnaryOperator<String> symptoms) {
    if (each instanceof DrillCourse.Line line) {
      return line(line);
    }
    if (each instanceof Page<?> page) {
      boolean first = page.equals(course.ready().get(0));
      return Card.of(page.title(), page.head().summary()).under(first ? "Ready courses" : "");
    }
    Progress progress = (Progress) each;
    double lost = progress.drills().stream().mapToDouble(drill -> drill.regret()).sum();
    Optional<String> dearest = progress.symptoms().keySet().stream().findFirst();
    String most = dearest.map(id -> "Most at: " + symptoms.apply(id)).orElse("");
    String back =
        progress.symptoms().keySet().stream()
            .map(id -> progress.repeat(id, today.get()).due())
            .min(Comparator.naturalOrder())
            .map(day -> "A symptom comes back on " + DayWords.of(day))
            .orElse("");
    return Card.of(
            progress.student(),
            CountWords.of(progress.drills().size(), "drill")
                + ", "
                + Minutes.words(lost)
                + " lost against the best plan. "
                + most)
        .noting(back)
        .under(
            progress.equals(students.known().get(0)) && course.opened().isPresent()
                ? "Students"
                : "");
  }

  private Card line(DrillCourse.Line line) {
    Card card = Card.of(line.number() + ". " + line.title(), "");
    if (!line.wrong().isEmpty()) {
      return card.second().noting("Cannot be played here: " + line.wrong());
    }
    return course.isPlayed(line) ? card.ofKind("played") : card;
  }

  JComponent first() {
    return list;
  }
}
