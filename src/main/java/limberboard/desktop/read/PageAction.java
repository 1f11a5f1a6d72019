package limberboard.desktop.read;

/**
 * Something that can be done with what is read, such as printing it: stands in the context menu and
 * has a key.
 *
 * @param title what a person reads
 * @param key as {@link javax.swing.KeyStroke#getKeyStroke(String)} reads it
 * @param action what is done
 */
public record PageAction(String title, String key, Runnable action) {}
