/**
 * A page's header as a form: {@link limberboard.writing.form.HeaderForm} has a {@link
 * limberboard.writing.form.FormField} for each key that the page's kind can have, with what it says
 * and where it stands.
 *
 * <p>To use it: make the form of a page, ask it for its fields, set or clear one, and take the page
 * from it; after the page was edited as text, give the form that text.
 *
 * <pre>{@code
 * import java.util.List;
 * import limberboard.library.page.Kind;
 * import limberboard.writing.PageText;
 * import limberboard.writing.form.*;
 *
 * var page = new PageText("---\ntitle: Bends # short\nzones: [bow]\nmine: 1\n---\nText.\n");
 * HeaderForm form = HeaderForm.of(Kind.TOPIC, page).orElseThrow();
 * assert form.value("zones").orElseThrow().equals(new FieldValue.Many(List.of("bow")));
 * HeaderForm other =
 *     form.set("title", new FieldValue.Text("Bends and hitches"))
 *         .set("zones", new FieldValue.Many(List.of("bow", "foredeck")));
 * assert other.page().text().equals(
 *     "---\ntitle: Bends and hitches # short\nzones: [bow, foredeck]\nmine: 1\n---\nText.\n");
 * assert other.unknown().equals(List.of("mine"));
 * }</pre>
 *
 * <p><b>Choices made.</b> There is no list of fields: {@link
 * limberboard.writing.form.FieldDeclaration} takes them from the records that headers are read
 * into. What came of a change is read again and must say exactly what was meant; otherwise it is
 * refused.
 *
 * <p><b>Threads.</b> All values are immutable.
 */
package limberboard.writing.form;
