/**
 * What a page cannot do on the boats there are, for whoever writes it: causes that no check tells
 * apart, checks that no plan asks for, mends dearer than the yard, and which estimates matter most.
 *
 * <p><b>Choices made.</b> It judges pages; {@code limberboard.trace} traces faults on a boat. It
 * may take minutes, and is run off the event thread.
 */
package limberboard.trace.review;
