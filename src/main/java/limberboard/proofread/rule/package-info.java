/**
 * The rules of a proofreader, one small class each, and what they find.
 *
 * <pre>{@code
 * import limberboard.proofread.rule.*;
 *
 * assert Rules.names().contains("no-caution");
 * assert Rules.all().stream().map(Rule::name).distinct().count() == Rules.all().size();
 * }</pre>
 *
 * <p><b>Choices made.</b> A {@link limberboard.proofread.rule.Rule} looks at one page and what is
 * around it ({@link limberboard.proofread.rule.Surroundings}) and keeps nothing. Its name and what
 * a {@link limberboard.proofread.rule.PageRemark} is about are what authors answer by, so they stay
 * as they are.
 *
 * <p><b>Threads.</b> Rules are immutable; surroundings belong to one thread at a time.
 */
package limberboard.proofread.rule;
