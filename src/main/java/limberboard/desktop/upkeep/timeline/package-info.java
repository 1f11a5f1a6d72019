/**
 * The season as a time line.
 *
 * <p><b>Choices made.</b> Worked out in the background and drawn by {@code print.drawing}.
 */
package limberboard.desktop.upkeep.timeline;
