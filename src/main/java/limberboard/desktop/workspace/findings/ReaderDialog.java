package limberboard.desktop.workspace.findings;

import java.awt.Component;
import java.util.Optional;
import javax.swing.JTextField;
import limberboard.desktop.parts.FieldsDialog;

/** Asks in a dialog what kind of reader has read a page in full. */
record ReaderDialog(Component above) {
  /**
   * Asks.
   *
   * @param title the page's title
   * @param last what kind of reader that was last time; empty text when it is the first time
   */
  Optional<String> ask(String title, String last) {
    FieldsDialog dialog =
        new FieldsDialog(
            above,
            "Read in full today",
            "“"
                + title
                + "” was read from its first word to its last, and holds. What kind of reader says"
                + " so stands in its header: a rigger, a shipwright, somebody who did not write"
                + " it.",
            "Note it");
    JTextField reader = dialog.field("Read by", "finding-reader", last);
    return dialog.ask() && !reader.getText().isBlank()
        ? Optional.of(reader.getText().strip())
        : Optional.empty();
  }
}
