/**
 * Whether a picture may be shown: its size in pixels, how deep and fine a drawing is, and that it
 * refers to nothing outside itself. All of it is asked before the picture is decoded.
 *
 * <p>To use it: {@link limberboard.library.picture.PictureSafety} says in half a sentence what is
 * wrong with a picture, if anything; {@link limberboard.library.picture.PixelCheck} decodes a PNG
 * or JPEG within limits.
 *
 * <pre>{@code
 * import java.io.ByteArrayInputStream;
 * import limberboard.library.picture.PictureSafety;
 *
 * String start = "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 8 8'>";
 * String plain = start + "<rect width='8' height='8'/></svg>";
 * assert PictureSafety.wrong(new ByteArrayInputStream(plain.getBytes())).isEmpty();
 * String scripted = start + "<script>alert(1)</script></svg>";
 * assert PictureSafety.wrong(new ByteArrayInputStream(scripted.getBytes())).isPresent();
 * }</pre>
 *
 * <p><b>Choices made.</b> The limits stand in {@code docs/file-formats.md}. A drawing is read as
 * XML without its definitions, so nothing in it can be made to grow or to fetch.
 *
 * <p><b>Threads.</b> Stateless; any thread, best not the event thread.
 */
package limberboard.library.picture;
