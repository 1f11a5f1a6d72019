/**
 * The place where the library is read.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>make a {@link limberboard.desktop.pages.PagesModel}, which knows no Swing;
 *   <li>make a {@link limberboard.desktop.pages.PagesPlace} on it and give it to the window;
 *   <li>open pages from elsewhere with {@link limberboard.desktop.pages.PagesModel#open}.
 * </ol>
 *
 * <p><b>Choices made.</b> The contents are filed by system, as somebody with a boat in front of
 * them thinks, and within a system by kind; what belongs to no system is filed by kind. A filter
 * looks at titles, summaries and what people call things. Links and backlinks stand as lists beside
 * the page, so that every link can be followed with the keyboard. A page that could not be read is
 * shown as the text of its file, at the line in question.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread.
 */
package limberboard.desktop.pages;
