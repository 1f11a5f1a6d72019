/**
 * Draws the packages and the arrows between them from the compiled code, so that the pictures in
 * {@code docs/pictures/rooms*.svg} are those of the code as it stands.
 *
 * <ol>
 *   <li>{@code mvn test -Dtest=RoomsPictureTest -Drooms.write=true} makes them anew;
 *   <li>the same without the property, and every {@code mvn verify}, says whether they still are.
 * </ol>
 *
 * <p>An arrow that follows from others is left out: where {@code print} needs {@code trace} and
 * {@code trace} needs {@code boat}, none is drawn from {@code print} to {@code boat}.
 */
package limberboard.rooms;
