package limberboard.desktop.read;

/**
 * A link in a page.
 *
 * @param address where it leads
 * @param start where it begins in the text of the page
 * @param end after its last letter
 */
record Link(String address, int start, int end) {}
