/**
 * The kinds of page and their records: what every page has ({@link limberboard.library.page.Head}),
 * what its {@link limberboard.library.page.Kind} adds ({@link limberboard.library.page.Details},
 * sealed), and the parts of these.
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import limberboard.library.LibraryReader;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.library.page.*;
 *
 * var library = new LibraryReader(new WorkspaceFolders(Path.of(""))).read();
 * for (Page<?> page : library.pages()) {
 *   assert page.kind() == page.details().kind() && !page.head().title().isEmpty();
 * }
 * for (Page<Symptom> page : library.all(Symptom.class)) {
 *   Symptom symptom = page.details();
 *   assert symptom.causes().stream().allMatch(cause -> symptom.cause(cause.id()).isPresent());
 * }
 * }</pre>
 *
 * <p><b>Choices made.</b> Records mirror the header: one component for each key. They are read by
 * {@code header} and judged by {@code check}.
 *
 * <p><b>Threads.</b> All values are immutable.
 */
package limberboard.library.page;
