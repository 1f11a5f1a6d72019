/**
 * The place where pages are written: the text with what is wrong with it, beside it the page as it
 * will read or its header as a form.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>make a {@link limberboard.desktop.write.state.WriteModel}, which knows no Swing;
 *   <li>make a {@link limberboard.desktop.write.WritePlace} on it and give it to the window;
 *   <li>open pages from elsewhere with {@link limberboard.desktop.base.Navigator#writePage}.
 * </ol>
 *
 * <p>Below this package: {@code state} (the models), {@code complete} (what can stand at the
 * caret), {@code text} (where text is typed). What stands beside the text is a {@link
 * limberboard.desktop.base.View} made in the place.
 *
 * <pre>{@code
 * import limberboard.desktop.write.state.*;
 * import limberboard.writing.PageText;
 *
 * var page = new PageText("---\ntitle: Bends\n---\n# One\nText.\n## Two ropes\nMore.\n");
 * int at = Headings.find(page, "Two ropes"); // where F4 puts the caret when that was read
 * assert page.plain().startsWith("## Two ropes", at);
 * assert Headings.above(page, page.plain().indexOf("More")).orElseThrow().equals("two ropes");
 * }</pre>
 *
 * <p><b>Choices made.</b> Questions (which page, what name, which version) are asked in the place
 * of the text and not in dialogs, so that they fit any window and Escape goes back. See {@code
 * docs/decisions/0048-write-place.md}.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread.
 */
package limberboard.desktop.write;
