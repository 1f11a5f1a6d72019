/**
 * What to write next: what cases, letters and searches say that the library lacks, in one list.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>tell letters apart with {@link limberboard.letters.next.UncoveredLetters};
 *   <li>make the list with {@link limberboard.letters.next.NextList};
 *   <li>begin a page with {@link limberboard.letters.next.NewPage}.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.util.List;
 * import limberboard.boat.*;
 * import limberboard.cases.NextPages.Hint;
 * import limberboard.letters.next.*;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.search.TextWords;
 *
 * WorkspaceFolders folders = new WorkspaceFolders(Path.of(""));
 * Workspace workspace = new WorkspaceReader(folders).read();
 * NextList next = new NextList(workspace, TextWords.read(folders, List.of()));
 * List<NamedText> letters =
 *     List.of(
 *         new NamedText("a.eml", "Fridge\n\nThe fridge hums and does not get cold."),
 *         new NamedText("b.eml", "Milk\n\nOur fridge is warm, it hums all day."));
 * Hint hint =
 *     next.of(letters, List.of("The berth is wet."), List.of()).stream()
 *         .filter(Hint::isNew)
 *         .findFirst()
 *         .orElseThrow();
 * assert hint.examples().equals(List.of("a.eml", "b.eml"));
 * assert NewPage.text(hint).contains("fridge");
 * }</pre>
 *
 * <p><b>Choices made.</b> Each hint weighs how many cases, letters or searches speak for it, times
 * what one of its kind counts ({@link limberboard.cases.NextPages.Kind#worth}). Letters are put
 * together by words that other letters use seldom, so that no word list has to say what telling
 * words are.
 *
 * <p><b>Threads.</b> All values are immutable; nothing here is for the event thread.
 */
package limberboard.letters.next;
