/**
 * The user guide inside the window.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>take the {@link limberboard.desktop.help.Guide} that is packed with the program;
 *   <li>make a {@link limberboard.desktop.help.HelpPlace} on it and give it to the window;
 *   <li>open the part about a place with {@link limberboard.desktop.help.HelpPlace#openFor}.
 * </ol>
 *
 * <pre>{@code
 * import java.util.Map;
 * import java.util.Optional;
 * import limberboard.desktop.help.Guide;
 *
 * var books = Map.of("user-guide", "# The guide\n\nBegin here.\n\n## Upkeep\n\nWhat is due.\n");
 * Guide guide = Guide.of(book -> Optional.ofNullable(books.get(book))); // or Guide.packed()
 * assert guide.parts().size() == 2;
 * assert guide.about("upkeep").orElseThrow().title().equals("Upkeep");
 * }</pre>
 *
 * <p><b>Choices made.</b> The guide is the same text as in {@code docs/}, packed by the build, so
 * that there is one. It is shown part by part through the same path as pages. Its pictures of the
 * window are left out: the window itself is there to be looked at.
 *
 * <p><b>Threads.</b> {@link limberboard.desktop.help.Guide} is immutable; the place belongs to the
 * event thread.
 */
package limberboard.desktop.help;
