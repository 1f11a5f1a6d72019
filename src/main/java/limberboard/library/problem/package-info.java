/**
 * What is wrong with something that a person wrote: {@link limberboard.library.problem.Problem}
 * with file, line, key, what is wrong and what would be right; {@link
 * limberboard.library.problem.Report} collects them; {@link limberboard.library.problem.Limits} are
 * the lengths and counts that people never meet.
 *
 * <pre>{@code
 * import java.util.List;
 * import java.util.Map;
 * import limberboard.library.problem.*;
 *
 * Report report = new Report("boats/knot/boat.yaml", Map.of("/water", 4));
 * report.error(
 *     "/water", "“slat” is no water", Nearest.advice("slat", List.of("salt", "fresh"), "water"));
 * Problem problem = report.problems().get(0);
 * assert problem.line() == 4 && problem.right().contains("salt") : problem;
 * }</pre>
 *
 * <p><b>Choices made.</b> Nothing throws for what a person wrote. The room knows no pages and no
 * files.
 *
 * <p><b>Threads.</b> Problems are immutable; a report belongs to one thread.
 */
package limberboard.library.problem;
