/**
 * Pictures of the workspace, for the light look, the dark one and paper.
 *
 * <p>To use it: take {@link limberboard.print.picture.Pictures} of a workspace and ask them for a
 * path; a {@link limberboard.print.picture.Picture} knows its size and is drawn as sharp as it is
 * wanted. A drawing that is made rather than kept is parsed by {@link
 * limberboard.print.picture.SvgPicture}.
 *
 * <pre>{@code
 * import limberboard.print.picture.*;
 *
 * String start = "<svg xmlns='http://www.w3.org/2000/svg' width='80' height='40'>";
 * String drawing = start + "<rect width='80' height='40'/></svg>";
 * Picture picture = SvgPicture.parse(drawing, Look.PAPER).orElseThrow();
 * assert PictureSize.within(picture, 40, 40).equals(new PictureSize(40, 20));
 * assert Pictures.none().find("articles/pictures/a.svg", Look.LIGHT).isEmpty();
 * }</pre>
 *
 * <p><b>Choices made.</b> Only files below the articles' pictures are read; nothing is fetched.
 * What may not be shown is no picture, and {@link limberboard.print.picture.Pictures#wrong} says
 * why.
 *
 * <p><b>Threads.</b> Any thread; reading a picture is best done off the event thread.
 */
package limberboard.print.picture;
