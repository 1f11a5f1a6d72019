/**
 * Writing pages, without a window: the text of a page to the letter, its header as a form, what is
 * wrong with it while it is typed, saving, renaming, deleting, and new pages.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>open a page's file as a {@link limberboard.writing.PageText};
 *   <li>change its header by {@code form} or its text as people see it;
 *   <li>look at what is wrong with it, and save it, with {@code draft};
 *   <li>rename or delete it with {@code change}, begin a new one with {@code start}.
 * </ol>
 *
 * <pre>{@code
 * import limberboard.writing.PageText;
 *
 * var page = new PageText("\uFEFF---\r\ntitle: Bends\r\n---\r\nTwo ropes.\r\n");
 * assert page.plain().equals("---\ntitle: Bends\n---\nTwo ropes.\n");
 * assert page.body().of(page.text()).equals("Two ropes.\r\n");
 * var edited = page.edited(page.plain().replace("Two", "Three"));
 * assert edited.text().equals("\uFEFF---\r\ntitle: Bends\r\n---\r\nThree ropes.\r\n");
 * }</pre>
 *
 * <p><b>Choices made.</b> What a person does not touch stays to the letter: see {@code
 * docs/decisions/0044-writing-pages.md}.
 *
 * <p><b>Threads.</b> All values are immutable.
 */
package limberboard.writing;
