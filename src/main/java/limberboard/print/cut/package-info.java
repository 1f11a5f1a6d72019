/**
 * A page cut to one boat, or to none: {@link limberboard.print.cut.PageCutter} chooses by kind, and
 * a cutter for each kind does the work.
 *
 * <p><b>Choices made.</b> Cautions are collected before anything is cut away, and come first. What
 * a licensed person does is left out here, and so turns up in no output.
 */
package limberboard.print.cut;
