/**
 * Type: the typeface, the width of words in it, what paper cannot show, and signs set well.
 *
 * <p><b>Choices made.</b> One typeface lies in the program, so that screen, paper and drawings
 * break lines alike.
 */
package limberboard.print.type;
