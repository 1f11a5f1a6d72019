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
 * looks at titles, summaries and what people call things. Which pages a page points to, and which
 * point here, stand at its foot; beside it stands the boat. Back and forward go over the other
 * places of the window too. What is wrong in the files is shown file by file, with the text of the
 * file at the line in question.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread.
 */
package limberboard.desktop.pages;
