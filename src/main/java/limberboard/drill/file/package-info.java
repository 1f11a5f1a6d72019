/**
 * Drills and students as files: orders, results, and what each student has drilled.
 *
 * <p>To use it: read and write single drills with {@link limberboard.drill.file.DrillFiles}, and
 * keep students with {@link limberboard.drill.file.StudentFiles}; make the courses that are pages
 * of the library ready to be played with {@link limberboard.drill.file.CoursePages}.
 *
 * <pre>{@code
 * import java.time.LocalDate;
 * import java.util.*;
 * import limberboard.drill.*;
 * import limberboard.drill.file.*;
 *
 * var order = new DrillOrder("clutch-slips", "dunlin", LocalDate.of(2026, 3, 15), 7, 0);
 * var steps = List.of(StepReader.read("check look-at-cams"), StepReader.read("mend worn-cams 70"));
 * var kept = new KeptDrill(order, "0123456789ab", Optional.of("7"), Optional.empty(), steps);
 * var files = new DrillFiles();
 * assert files.read("result.yaml", files.text(kept)).drill().equals(Optional.of(kept));
 * }</pre>
 *
 * <p>Courses:
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import limberboard.boat.WorkspaceReader;
 * import limberboard.drill.file.*;
 * import limberboard.library.file.WorkspaceFolders;
 *
 * var workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
 * var courses = new CoursePages(workspace, LocalDate.of(2026, 3, 15));
 * for (var page : courses.pages()) {
 *   for (CourseLesson lesson : courses.lessons(page)) {
 *     assert lesson.drill().isPresent() != lesson.wrong().isPresent();
 *   }
 * }
 * }</pre>
 *
 * <p><b>Choices made.</b> A result holds the steps and no marks, so that nobody can mark himself; a
 * stamp says on which figures it was played. A student's file holds the marks, so that it stays
 * when the library moves on, and is never shared.
 *
 * <p><b>Threads.</b> Any number may read and write.
 */
package limberboard.drill.file;
