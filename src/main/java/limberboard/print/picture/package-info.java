/**
 * Pictures of the workspace, for the light look, the dark one and paper.
 *
 * <p><b>Choices made.</b> Only files below the articles' pictures are read; nothing is fetched.
 */
package limberboard.print.picture;
