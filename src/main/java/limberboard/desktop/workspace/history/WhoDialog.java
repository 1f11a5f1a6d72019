package limberboard.desktop.workspace.history;

import java.awt.Component;
import java.util.Optional;
import javax.swing.JTextField;
import limberboard.desktop.parts.FieldsDialog;
import limberboard.history.Author;

/** Asks in a dialog who records. */
public record WhoDialog(Component above) implements WhoRecords.Question {
  @Override
  public Optional<Author> ask(Optional<Author> proposed) {
    FieldsDialog dialog =
        new FieldsDialog(
            above,
            "Who records?",
            "Each version says who made it. Your name and address stand in the history, and go"
                + " with it where it is shared. The address may be left empty.",
            "Record so");
    JTextField name = dialog.field("Name", "who-name", proposed.map(Author::name).orElse(""));
    JTextField mail = dialog.field("Address", "who-mail", proposed.map(Author::mail).orElse(""));
    return dialog.ask()
        ? Author.read(name.getText().strip() + " <" + mail.getText().strip() + ">")
        : Optional.empty();
  }
}
