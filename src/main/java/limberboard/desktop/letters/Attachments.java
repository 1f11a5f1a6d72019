package limberboard.desktop.letters;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Notices;
import limberboard.letters.mail.Attachment;
import limberboard.library.file.SafeFiles;

/** Shows pictures that came with a letter and saves attachments, each only when asked. */
final class Attachments {
  private static final int MOST_SHOWN = 30_000_000;
  private static final int MOST_SAVED = 100_000_000;
  private final LetterReading reading;
  private final Background background;
  private final Notices notices;
  private final LetterOutlets outlets;

  Attachments(
      LetterReading reading, Background background, Notices notices, LetterOutlets outlets) {
    this.reading = reading;
    this.background = background;
    this.notices = notices;
    this.outlets = outlets;
  }

  /**
   * Reads a picture.
   *
   * @param shown takes it on the event thread; not called where it cannot be shown
   */
  void show(
      String letter, Attachment attachment, java.util.function.Consumer<BufferedImage> shown) {
    background.run(
        "Reading the picture",
        () ->
            reading
                .attachment(letter, attachment.number(), MOST_SHOWN)
                .flatMap(AttachedPicture::of),
        picture ->
            picture.ifPresentOrElse(
                shown,
                () ->
                    notices.tell(
                        attachment.name()
                            + " cannot be shown here. Save it and open it in another program.")));
  }

  /** Asks for a file and saves an attachment there. */
  void save(String letter, Attachment attachment) {
    String plain = attachment.name().replaceAll("[^\\p{L}\\p{N}. ()_-]", "_");
    String name = plain.contains(".") ? plain : plain + ".bin";
    outlets
        .askFile()
        .apply(name)
        .ifPresent(
            file ->
                background.run(
                    "Saving " + file.getFileName(),
                    () -> save(letter, attachment, file),
                    saved ->
                        notices.tell(
                            saved
                                ? "Saved as " + file + "."
                                : attachment.name() + " could not be found in the letter.")));
  }

  private boolean save(String letter, Attachment attachment, Path file) throws IOException {
    Optional<byte[]> bytes = reading.attachment(letter, attachment.number(), MOST_SAVED);
    if (bytes.isPresent()) {
      SafeFiles.write(file, bytes.get());
    }
    return bytes.isPresent();
  }
}
