package limberboard.cli;

import java.nio.file.Path;

/**
 * Which pictures of the window are asked for.
 *
 * @param to the folder they are written to
 * @param width of the window in pixels
 * @param height of the window in pixels
 * @param textPercent text size, 100 to 200
 */
public record PictureOrder(Path to, int width, int height, int textPercent) {}
