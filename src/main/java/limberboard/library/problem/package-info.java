/**
 * What is wrong with something that a person wrote: {@link limberboard.library.problem.Problem}
 * with file, line, key, what is wrong and what would be right; {@link
 * limberboard.library.problem.Report} collects them; {@link limberboard.library.problem.Limits} are
 * the lengths and counts that people never meet.
 *
 * <p><b>Choices made.</b> Nothing throws for what a person wrote. The room knows no pages and no
 * files.
 */
package limberboard.library.problem;
