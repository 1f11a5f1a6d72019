/**
 * Whether a picture may be shown: its size in pixels, how deep and fine a drawing is, and that it
 * refers to nothing outside itself. All of it is asked before the picture is decoded.
 *
 * <p><b>Choices made.</b> The limits stand in {@code docs/file-formats.md}.
 */
package limberboard.library.picture;
