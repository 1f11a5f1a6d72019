package limberboard.desktop.letters;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.letters.mail.Attachment;

/** Something that came with a letter: its name, kind and length; a picture when asked for it. */
final class AttachmentRow extends Column {
  private static final long KILO = 1_000;
  private static final long MEGA = 1_000_000;
  private final Attachment attachment;
  private final JButton show;

  AttachmentRow(String letter, Attachment attachment, Attachments attachments) {
    super(4);
    this.attachment = attachment;
    show =
        Buttons.plain(
            "Show picture",
            "attachment-show-" + attachment.number(),
            () -> attachments.show(letter, attachment, this::picture));
    List<JButton> buttons = new ArrayList<>();
    if (attachment.isPicture()) {
      buttons.add(show);
    }
    buttons.add(
        Buttons.plain(
            "Save …",
            "attachment-save-" + attachment.number(),
            () -> attachments.save(letter, attachment)));
    String words = attachment.name() + ", " + attachment.type() + ", " + size(attachment.bytes());
    add(Row.worded(8, Text.plain(words), buttons.toArray(JButton[]::new)));
  }

  private static String size(long bytes) {
    if (bytes < KILO) {
      return bytes + " bytes";
    }
    return bytes < MEGA ? bytes / KILO + " kB" : bytes / MEGA + " MB";
  }

  private void picture(BufferedImage picture) {
    show.setEnabled(false);
    add(new PictureView(picture, attachment.name()));
    revalidate();
  }
}
